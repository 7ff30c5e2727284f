import { refuseUnlessPlan } from "../plan/brand.js";
import type { WarpPlan } from "../plan/warp-plan.js";
import { costLines, fibreLines, firstInchesLines, foundLines } from "./after-lines.js";
import { beforeCutting, fitLines } from "./before-cutting.js";
import { plainText } from "./clean.js";
import { measureLines, recordLines, shedLines, tapeLines } from "./cloth-lines.js";
import { countLines, groupLines } from "./group-lines.js";
import { layingLines } from "./joining-lines.js";
import { section, wrapped } from "./layout.js";
import { raddleLines } from "./raddle-lines.js";
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
    ...section("Count the old warp", ...countLines(plan)),
    ...section("Before you cut", ...beforeCutting(plan)),
    ...(fits ? fit : []),
    ...section("Width and length", ...sizeLines(plan)),
    ...section("Yarn", ...yarnLines(plan)),
    ...section("Winding", ...windingLines(plan)),
    ...(plan.position.beamed === "before tying" ? section("Raddle", ...raddleLines(plan)) : []),
    ...section("Laying the chains", ...layingLines(plan)),
    ...section("Joining", ...groupLines(plan)),
    ...section("When all is tied", ...wrapped(plan.position.afterTying)),
    ...section("Shaft by shaft", ...shedLines(plan)),
    ...section("Where each piece stops", ...tapeLines(plan)),
    ...section("Measures", ...firstInchesLines(plan), ...measureLines(plan), ...foundLines(plan)),
    ...section("Cost and least price", ...costLines(plan)),
    ...section("Fibres for the label", ...fibreLines(plan)),
    ...section("Keep for the next run", ...recordLines(plan)),
    ...section("The workings", ...workingParts(plan).flatMap(([heading, lines]) => [heading, ...lines, ""])),
  ];
  return lines.join("\n").trimEnd();
}
