import { inches, percentLost, times, warpLength } from "@thrum/maths";
import type { Length } from "@thrum/maths";
import type { Job } from "../job/job.js";
import { step } from "./step.js";
import type { PlanStep } from "./step.js";

/** A mark of the piece tape: how far the cloth at weaving tension must have grown when a piece ends. */
export interface TapeMark {
  readonly piece: number;
  readonly at: Length;
}

/** A tape pinned to the cloth. */
export interface PieceTape {
  /** One piece with its hems, at weaving tension. */
  readonly wovenLength: Length;
  readonly marks: readonly TapeMark[];
  /** All pieces, end to end. */
  readonly woven: Length;
  readonly steps: readonly PlanStep[];
}

/** Where each piece stops, measured on the cloth from the first pick: the sum of the warp's length without thread or waste. */
export function pieceTape({ pieces }: Job): PieceTape {
  const { number, finishedLength, hemEachEnd, loomToFinished } = pieces;
  const cloth = { pieces: 1, finishedLength, hemEachEnd, loomToFinished };
  const input = { ...cloth, takeUp: percentLost(0), loomWaste: inches(0) };
  const wovenLength = warpLength(input);
  const marks = Array.from({ length: number }, (_, at) => ({ piece: at + 1, at: times(wovenLength, at + 1) }));
  return { wovenLength, marks, woven: times(wovenLength, number), steps: [step(warpLength, input)] };
}
