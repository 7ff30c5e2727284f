import { asText } from "@thrum/maths";
import type { WarpPlan } from "../plan/warp-plan.js";
import { plainText } from "./clean.js";
import { keptIndent } from "./layout.js";

/** The sum behind a number, line by line, under its name. */
export type WorkingPart = readonly [heading: string, lines: readonly string[]];

/** Every sum of the plan: those of the warp, of the old warp that stands in, and of each yarn. */
export function workingParts({ steps, position, yarns }: WarpPlan): readonly WorkingPart[] {
  const named = yarns.flatMap(({ name, steps: own }) => own.map((one) => ({ of: ` of ${plainText(name)}`, one })));
  const spared = position.steps.map((one) => ({ of: " spared by the old warp", one }));
  const all = [...steps.map((one) => ({ of: "", one })), ...spared, ...named];
  return all.map(({ of, one }) => {
    const [heading = "", ...lines] = asText(one.explain()).split("\n");
    return [`${heading}${of}`, lines.flatMap(keptIndent)];
  });
}
