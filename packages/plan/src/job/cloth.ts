import type { EndsPerLength, Length, PicksPerLength } from "@thrum/maths";
import { length, lengthOrNone } from "./amounts.js";
import type { Form } from "./form.js";
import { group } from "./group.js";
import { loss } from "./loss.js";
import type { WrittenLoss } from "./loss.js";
import { endsPerLength, picksPerLength } from "./per-length.js";
import type { Runs } from "./runs.js";
import { threading } from "./threading.js";
import type { Threaded } from "./threading.js";
import type { Meanings } from "./meaning.js";

/** What the cloth is wanted to be, and what it loses. */
export interface JobCloth {
  readonly sett?: EndsPerLength;
  readonly threading?: Runs<Threaded>;
  readonly finishedWidth?: Length;
  /** At weaving tension. */
  readonly picks?: PicksPerLength;
  /** Thread, from wound to weaving tension. */
  readonly takeUp?: WrittenLoss;
  /** Cloth, from weaving tension to finished. */
  readonly lengthLoomToFinished?: WrittenLoss;
  readonly widthReedToFinished?: WrittenLoss;
}

export interface JobWarp {
  /** Fixed beforehand. */
  readonly length?: Length;
  readonly wasteInFront?: Length;
  readonly wasteBehind?: Length;
}

export const cloth: Form<JobCloth> = group<JobCloth>({
  sett: endsPerLength,
  threading,
  finishedWidth: length,
  picks: picksPerLength,
  takeUp: loss,
  lengthLoomToFinished: loss,
  widthReedToFinished: loss,
});

export const warp: Form<JobWarp> = group<JobWarp>({ length, wasteInFront: lengthOrNone, wasteBehind: lengthOrNone });

/** What each key of `cloth` means, for the schema. */
export const clothMeans: Meanings = {
  sett: "Ends in a length; compared with the loom, or used where the loom is not given.",
  threading: "The threading the cloth is meant to have.",
  finishedWidth: "The width wanted; without an old warp it says how many ends.",
  picks: "Picks in a length, at weaving tension.",
  takeUp: "Loss of the thread, from wound to weaving tension.",
  lengthLoomToFinished: "Loss of the cloth, from weaving tension to finished.",
  widthReedToFinished: "Loss of width, from the reed to finished.",
};

/** What each key of `warp` means, for the schema. */
export const warpMeans: Meanings = {
  length: "Fixed beforehand; left out, it is reckoned.",
  wasteInFront: "Lost in front, of a warp threaded afresh.",
  wasteBehind: "Lost behind, of a warp threaded afresh.",
};
