import { asText } from "@thrum/maths";
import { refuseUnlessPlan } from "../plan/brand.js";
import type { WarpPlan } from "../plan/warp-plan.js";
import { beforeCutting, fitLines } from "./before-cutting.js";
import { plainText } from "./clean.js";
import { measureLines, shedLines, tapeLines } from "./cloth-lines.js";
import { countLines, groupLines } from "./group-lines.js";
import { joiningLines, layingLines } from "./joining-lines.js";
import { keptIndent, section, wrapped } from "./layout.js";
import { windingLines } from "./winding-lines.js";
import { sizeLines, yarnLines } from "./yarn-lines.js";

function workings({ steps, position, yarns }: WarpPlan): readonly string[] {
  const named = yarns.flatMap(({ name, steps: own }) => own.map((one) => ({ of: ` of ${plainText(name)}`, one })));
  const spared = position.steps.map((one) => ({ of: " spared by the old warp", one }));
  const all = [...steps.map((one) => ({ of: "", one })), ...spared, ...named];
  return all.flatMap(({ of, one }) => {
    const [heading = "", ...lines] = asText(one.explain()).split("\n");
    return [`${heading}${of}`, ...lines.flatMap(keptIndent), ""];
  });
}

/**
 * A plan as plain text in 80 columns, in the order of the work at the loom. A plan that does not fit says so first.
 *
 * @param plan what `planWarp` gives
 * @throws QuantityError for anything else, a copy of a plan too
 */
export function planText(plan: WarpPlan): string {
  refuseUnlessPlan("planText(plan)", plan);
  const fit = section("Does the new warp fit?", ...fitLines(plan));
  const fits = plan.fit.verdict !== "does not fit";
  const lines = [
    ...wrapped(plainText(plan.title)),
    ...wrapped(plainText(plan.note)),
    "",
    ...(fits ? [] : fit),
    ...section("Count the old warp", ...countLines(plan)),
    ...section("Before you cut", ...beforeCutting(plan)),
    ...(fits ? fit : []),
    ...section("Width and length", ...sizeLines(plan)),
    ...section("Yarn", ...yarnLines(plan)),
    ...section("Winding", ...windingLines(plan)),
    ...section("Laying the chains", ...layingLines(plan)),
    ...section("Joining", ...joiningLines(plan)),
    ...section("The knots, group by group", ...groupLines(plan)),
    ...section("When all is tied", ...wrapped(plan.position.afterTying)),
    ...section("Shaft by shaft", ...shedLines(plan)),
    ...section("Where each piece stops", ...tapeLines(plan)),
    ...section("Measures", ...measureLines(plan)),
    ...section("The workings", ...workings(plan)),
  ];
  return lines.join("\n").trimEnd();
}
