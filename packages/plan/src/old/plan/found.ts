import { difference, lossFromMeasures } from "@thrum/maths";
import type { Length, Loss } from "@thrum/maths";
import type { Job } from "../job/job.js";
import { step } from "./step.js";
import type { PlanStep } from "./step.js";

/** A loss between two measures of one thing; null where the later is no shorter. */
export interface FoundLoss {
  readonly what: string;
  readonly before: Length;
  readonly after: Length;
  readonly loss: Loss | null;
  /** The key of the next job file that it fills; null where it is only a part of one. */
  readonly fills: string | null;
}

/** What a piece really lost on its way from the reed to the press. */
export interface FoundPlan {
  readonly losses: readonly FoundLoss[];
  readonly steps: readonly PlanStep[];
}

function isShorter(before: Length, after: Length): boolean {
  return !difference(before, after).value.startsWith("-");
}

/** The losses worked out from the measures of one piece; null where the job has none. */
export function foundPlan({ found }: Job): FoundPlan | null {
  if (found === undefined) return null;
  const { warpUsed, length, width } = found;
  const pairs: readonly (readonly [string, Length, Length, string | null])[] = [
    ["warp taken up in weaving", warpUsed, length.onLoom, "newWarp.takeUp"],
    ["length, off the loom", length.onLoom, length.offLoom, null],
    ["length, washed and pressed", length.offLoom, length.finished, null],
    ["length in all", length.onLoom, length.finished, "pieces.loomToFinished"],
    ["width, reed to fell", width.inReed, width.atFell, null],
    ["width, off the loom", width.atFell, width.offLoom, null],
    ["width, washed and pressed", width.offLoom, width.finished, null],
    ["width in all", width.inReed, width.finished, "pieces.widthReedToFinished"],
  ];
  const losses = pairs.map(([what, before, after, fills]): FoundLoss => {
    const loss = isShorter(before, after) ? lossFromMeasures({ before, after }) : null;
    return { what, before, after, loss, fills };
  });
  return {
    losses,
    steps: losses.flatMap(({ before, after, loss }) =>
      loss === null ? [] : [step(lossFromMeasures, { before, after })],
    ),
  };
}
