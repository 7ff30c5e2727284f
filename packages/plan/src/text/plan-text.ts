import { refuseUnlessPlan } from "../plan/brand.js";
import type { WarpPlan } from "../plan/plan-warp.js";
import { beforeCutting, fitLines } from "./before-cutting.js";
import { plainText } from "./clean.js";
import { joiningLines, layingLines } from "./joining-lines.js";
import { section, wrapped } from "./layout.js";
import { windingLines } from "./winding-lines.js";
import { workingParts } from "./working-parts.js";
import { sizeLines, yarnLines } from "./yarn-lines.js";

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
    ...section("Before you cut", ...beforeCutting(plan)),
    ...(fits ? fit : []),
    ...section("Width and length", ...sizeLines(plan)),
    ...section("Yarn", ...yarnLines(plan)),
    ...section("Winding", ...windingLines(plan)),
    ...section("Laying the chains", ...layingLines(plan)),
    ...section("Joining", ...joiningLines(plan)),
    ...section("When all is tied", ...wrapped(plan.position.afterTying)),
    ...section("The workings", ...workingParts(plan).flatMap(([heading, lines]) => [heading, ...lines, ""])),
  ];
  return lines.join("\n").trimEnd();
}
