import { asText } from "@thrum/maths";
import type { PlanStep } from "../plan/step.js";
import type { WarpPlan } from "../plan/warp-plan.js";
import { plainText } from "./clean.js";
import { keptIndent } from "./layout.js";

/** The sum behind a number, line by line, under its name. */
export type WorkingPart = readonly [heading: string, lines: readonly string[]];

/** Every sum of the plan: those of the warp, of the old warp that stands in, of each yarn, and of what was measured and paid. */
export function workingParts(plan: WarpPlan): readonly WorkingPart[] {
  const { steps, position, yarns, firstInches, found, costs, fibres } = plan;
  const plain = (one: PlanStep): { of: string; one: PlanStep } => ({ of: "", one });
  const named = yarns.flatMap(({ name, steps: own }) => own.map((one) => ({ of: ` of ${plainText(name)}`, one })));
  const spared = position.steps.map((one) => ({ of: " spared by the old warp", one }));
  const after = [firstInches, found, costs, ...(fibres ?? [])].flatMap((part) => part?.steps ?? []);
  const all = [...steps.map(plain), ...spared, ...named, ...after.map(plain)];
  return all.map(({ of, one }) => {
    const [heading = "", ...lines] = asText(one.explain()).split("\n");
    return [`${heading}${of}`, lines.flatMap(keptIndent)];
  });
}
