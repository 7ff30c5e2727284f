import { compare, difference, piecesFromWarp, times, wovenLength } from "@thrum/maths";
import type { Length } from "@thrum/maths";
import type { Job } from "../job/job.js";
import { step } from "./step.js";
import type { PlanStep } from "./step.js";

/** A mark of the piece tape: how far the cloth at weaving tension must have grown when a piece ends. */
export interface TapeMark {
  readonly piece: number;
  readonly at: Length;
}

/** A tape pinned to the cloth, and the pieces that the whole warp gives. */
export interface PieceTape {
  /** One piece with its hems, at weaving tension. */
  readonly wovenLength: Length;
  /** What is turned under at each end of it, at weaving tension. */
  readonly hem: Length;
  readonly marks: readonly TapeMark[];
  /** All pieces, end to end. */
  readonly woven: Length;
  /** Pieces still possible with the warp that is left; null where it was not measured. */
  readonly piecesLeft: number | null;
  readonly steps: readonly PlanStep[];
}

/** Where each piece stops, measured on the cloth from the first pick, never on the warp. */
export function pieceTape({ pieces, newWarp, warpLeft }: Job, warpLength: Length, loomWaste: Length): PieceTape {
  const { finishedLength, hemEachEnd, loomToFinished, number } = pieces;
  const wovenInput = { finishedLength, hemEachEnd, loomToFinished };
  const woven = wovenLength(wovenInput);
  const unhemmedInput = { ...wovenInput, hemEachEnd: times(hemEachEnd, 0) };
  const unhemmed = wovenLength(unhemmedInput);
  const left = { warpLeft: warpLeft ?? warpLength, loomWaste, takeUp: newWarp.takeUp, wovenLength: woven };
  const isSpent = compare(left.warpLeft, loomWaste) <= 0;
  const marks = Array.from({ length: number }, (_, at) => ({ piece: at + 1, at: times(woven, at + 1) }));
  return {
    wovenLength: woven,
    hem: times(difference(woven, unhemmed), 0.5),
    marks,
    woven: times(woven, number),
    piecesLeft: warpLeft === undefined ? null : isSpent ? 0 : piecesFromWarp(left),
    steps: [
      step(wovenLength, wovenInput),
      step(wovenLength, unhemmedInput),
      ...(isSpent ? [] : [step(piecesFromWarp, left)]),
    ],
  };
}
