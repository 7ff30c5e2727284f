import type { BesideTheWarp } from "../job/job.js";
import type { JobPiece } from "../job/pieces.js";
import type { Hand, Runs } from "../job/runs.js";
import type { Stripe } from "../job/stripes.js";
import type { Shots } from "../job/weft.js";

/** A yarn that the job uses. */
export interface YarnRow {
  readonly name: string;
  readonly place: string;
}

/** The names in runs as they are written, each once, in the order met. */
export function namesInRuns(runs: Runs<Hand>): readonly string[] {
  const names = runs.flatMap((run) =>
    "of" in run ? namesInRuns(run.of) : "mirror" in run ? namesInRuns(run.mirror) : run.yarns,
  );
  return [...new Set(names)];
}

/** The yarns in the order of the stripes, of the weft, of what is wound beside the warp. */
export function yarnRows(given: {
  readonly stripes: Runs<Stripe> | null;
  readonly weft: Runs<Shots> | null;
  readonly pieces: readonly JobPiece[] | null;
  readonly between: Hand | null;
  readonly extra: readonly BesideTheWarp[] | null;
}): readonly YarnRow[] {
  const { stripes, weft, pieces, between, extra } = given;
  const names = [
    ...namesInRuns(stripes ?? []),
    ...namesInRuns(weft ?? []),
    ...(pieces ?? []).flatMap((piece) => namesInRuns(piece.weft?.stripes ?? [])),
    ...(between?.yarns ?? []),
    ...(extra ?? []).map(({ yarn }) => yarn),
  ];
  return [...new Set(names)].map((name) => ({ name, place: name }));
}
