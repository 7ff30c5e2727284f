import { positive, readInputs, whole } from "../../engine/formula/index.js";
import type { ReportStep } from "../../engine/formula/index.js";
import { frozen } from "../../engine/frozen.js";
import { compare, difference, requireList } from "../../engine/quantity/index.js";
import { allTogether } from "../../engine/refusal.js";
import { Length } from "../../units/index.js";
import { longestWarp } from "./longest-warp.js";
import type { LongestWarpInput } from "./longest-warp.js";
import { yarnForEnds } from "./yarn-for-ends.js";
import { checkName } from "./yarn-stripe.js";

/** One colour of the warp, with the yarn of it at hand. */
export interface ColourAtHand {
  /** The weaver's name for it. */
  readonly colour: string;
  readonly ends: number;
  readonly yarn: Length;
}

/** The longest warp of several colours: as long as the colour allows that runs out first. */
export interface LongestWarpByColour {
  readonly warp: Length;
  readonly runsOutFirst: string;
  /** What stays of each colour when the warp is wound so long. */
  readonly left: readonly { readonly colour: string; readonly yarn: Length }[];
  readonly steps: readonly ReportStep<LongestWarpInput>[];
}

/**
 * The longest warp that the yarns at hand allow, the colour that runs out first, and what stays of the others.
 *
 * @param colours each with its ends and the length of yarn at hand
 * @throws QuantityError "empty" for no colours, and for a field that is missing, unknown or of another kind
 * @source warping-plan-2015
 * @example
 * const colours = [{ colour: "ash", ends: 300, yarn: yards(1680) }, { colour: "coal", ends: 100, yarn: yards(520) }];
 * longestWarpByColour(colours).runsOutFirst // "coal"
 */
export function longestWarpByColour(colours: readonly ColourAtHand[]): LongestWarpByColour {
  const where = ["longestWarpByColour", "colours"] as const;
  const remedy = 'Write [{ colour: "ash", ends: 300, yarn: yards(1680) }].';
  requireList(where, colours, "a list of colours", remedy);
  const declared = {
    ends: whole("ends", "of this colour", { atLeast: 1 }),
    yarn: positive(Length, "of this colour at hand"),
  };
  const parts = Array.from(colours, (one, at) => {
    const { colour, ...others } = Object(one) as ColourAtHand;
    return [
      (): void => {
        checkName([...where, at, "colour"], colour, remedy);
      },
      (): unknown => readInputs([...where, at], declared, others),
    ];
  });
  allTogether(...parts.flat());
  const each = colours.map(({ colour, ...input }) => ({ colour, input, warp: longestWarp(input) }));
  const shortest = each.reduce((a, b) => (compare(b.warp, a.warp) < 0 ? b : a));
  const left = each.map(({ colour, input }) => {
    const used = yarnForEnds({ ends: input.ends, warpLength: shortest.warp });
    return { colour, yarn: difference(input.yarn, used) };
  });
  return frozen({
    warp: shortest.warp,
    runsOutFirst: shortest.colour,
    left,
    steps: each.map(({ input }) => ({ calculation: longestWarp, input })),
  });
}
