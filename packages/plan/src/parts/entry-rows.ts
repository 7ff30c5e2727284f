import type { JobPiece } from "../job/pieces.js";

/** An entry of the run, or the breaks between all of them. */
export interface EntryRow {
  readonly name: string;
  /** Its place in the pieces. */
  readonly place?: number;
  /** Its place among the rows. */
  readonly index: number;
  /** What the weaver calls it. */
  readonly title: string;
  readonly kind: "cloth" | "at the loom" | "between";
  /** Where its number comes from. */
  readonly comesBy: "given" | "the warp gives" | "the yarn gives" | "between";
  /** As written: an open number is none, one left out is one. */
  readonly written: number;
  /** One where it is the entry that grows with the warp or the yarn, else none. */
  readonly grows: number;
}

function comesBy({ number = 1 }: JobPiece): EntryRow["comesBy"] {
  if (typeof number === "number") return "given";
  return number === "as many as the warp gives" ? "the warp gives" : "the yarn gives";
}

/** The rows that the pieces make: what grows is the open entry, or the one cloth there is. */
export function entryRows(pieces: readonly JobPiece[], hasBreaks: boolean): readonly EntryRow[] {
  const open = pieces.findIndex((piece) => comesBy(piece) !== "given");
  const cloths = pieces.flatMap((piece, at) => (piece.atLoom === undefined ? [at] : []));
  const growing = open >= 0 ? open : cloths.length === 1 ? cloths[0] : undefined;
  const rows = pieces.map((piece, place): EntryRow => {
    const { number = 1, name, atLoom } = piece;
    return {
      name: String(place + 1),
      place,
      index: place,
      title: name ?? `piece ${place + 1}`,
      kind: atLoom === undefined ? "cloth" : "at the loom",
      comesBy: comesBy(piece),
      written: typeof number === "number" ? number : 0,
      grows: place === growing ? 1 : 0,
    };
  });
  const breaks: EntryRow = {
    name: "breaks",
    index: rows.length,
    title: "between two pieces",
    kind: "between",
    comesBy: "between",
    written: 0,
    grows: 0,
  };
  return hasBreaks ? [...rows, breaks] : rows;
}
