import type { JobPiece } from "../job/pieces.js";
import type { Hand, Runs } from "../job/runs.js";
import type { Shots } from "../job/weft.js";
import { waits } from "../core/waits.js";
import type { EntryRow } from "./entry-rows.js";
import { namesInRuns } from "./yarn-rows.js";

/** A yarn woven into an entry. */
export interface WeftRow {
  readonly name: string;
  readonly of: { readonly piece: string; readonly yarn: string };
  readonly yarn: string;
}

/** The yarns of each entry; a header, a sample and the breaks take the job's weft where that is one yarn. */
export function weftRows(given: {
  readonly entries: readonly EntryRow[];
  readonly pieces: readonly JobPiece[];
  readonly weft: Runs<Shots> | null;
  readonly between: Hand | null;
}): readonly WeftRow[] {
  const { entries, pieces, weft, between } = given;
  const shared = (kind: EntryRow["kind"], ...path: readonly (string | number)[]): readonly string[] => {
    if (weft === null) return waits("weft");
    const names = namesInRuns(weft);
    return kind === "cloth" || names.length === 1 ? names : waits(...path);
  };
  return entries.flatMap(({ name, place, kind }) => {
    const own = place === undefined ? undefined : pieces[place]?.weft?.stripes;
    const yarns =
      own !== undefined
        ? namesInRuns(own)
        : place === undefined
          ? (between?.yarns ?? shared(kind, "betweenPieces"))
          : shared(kind, "pieces", place, "weft");
    return [...new Set(yarns)].map((yarn) => ({ name: `${name} ${yarn}`, of: { piece: name, yarn }, yarn }));
  });
}
