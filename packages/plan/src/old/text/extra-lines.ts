import type { WarpPlan } from "../plan/warp-plan.js";
import { yarnText } from "./amounts.js";
import { plainText } from "./clean.js";
import { table, wrapped } from "./layout.js";

/** Why a yarn takes more warp than its ends: nothing where nothing is wound beside the warp. */
export function extraInYarn({ yarns }: WarpPlan): readonly string[] {
  return yarns
    .filter(({ extraEnds }) => extraEnds > 0)
    .map(({ name, ends, extraEnds }) => {
      const wound = `${String(ends)} + ${String(extraEnds)} = ${String(ends + extraEnds)}`;
      return `The warp yarn of ${plainText(name)} is for ${wound} ends: ${String(extraEnds)} are wound beside the warp.`;
    });
}

export const EXTRA_SAYS =
  "Wind these apart, as long as the warp, and tie a label to each. They are not joined to the old warp and are not counted among its ends.";

export const EXTRA_HEADS: readonly string[] = ["for", "yarn", "ends", "each"];

/** What is wound beside the warp. */
export function extraRows({ extraEnds }: WarpPlan): readonly (readonly (string | number)[])[] {
  return extraEnds.map(({ use, yarn, ends, length }) => [use, plainText(yarn), ends, yarnText(length, "roundUp")]);
}

/** The same in lines. */
export function extraLines(plan: WarpPlan): readonly string[] {
  if (plan.extraEnds.length === 0) return [];
  return ["", "Beside the warp", ...wrapped(EXTRA_SAYS), ...table(EXTRA_HEADS, extraRows(plan))];
}
