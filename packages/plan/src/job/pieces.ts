import type { Length, PicksPerLength } from "@thrum/maths";
import { length, lengthNotation, lengthOrNone } from "./amounts.js";
import { Unreadable } from "./fault.js";
import { text } from "./form.js";
import type { Form } from "./form.js";
import { either, oneOf, whole, words } from "./forms.js";
import { list } from "./lists.js";
import { group } from "./group.js";
import { handText } from "./hand-text.js";
import { readHand } from "./hand.js";
import { loss } from "./loss.js";
import type { WrittenLoss } from "./loss.js";
import { picksPerLength } from "./per-length.js";
import type { Hand } from "./runs.js";
import { weft } from "./weft.js";
import type { JobWeft } from "./weft.js";
import type { Meanings } from "./meaning.js";
import { jobWords } from "./job-words.js";

/** A number of pieces left open. */
export type OpenNumber = "as many as the warp gives" | "as many as the yarn gives";

/** One entry of the order, in the order of weaving: so many pieces, or a length woven that is no piece. */
export interface JobPiece {
  readonly number?: number | OpenNumber;
  readonly name?: string;
  readonly finishedLength?: Length;
  readonly hemEachEnd?: Length;
  /** Warp left unwoven at each end. */
  readonly fringeEachEnd?: Length;
  /** Its length before and after it is twisted. */
  readonly fringeTwist?: WrittenLoss;
  /** Woven so long and no piece: a header, a sample. */
  readonly atLoom?: Length;
  readonly weft?: JobWeft;
  readonly picks?: PicksPerLength;
}

/** Woven between two entries of the run and cut away: a length or picks. */
export interface BetweenPieces {
  readonly length?: Length;
  readonly picks?: number;
  readonly weft?: Hand;
}

const open: Form<OpenNumber> = oneOf(...jobWords["pieces.number"]);
const number = either<OpenNumber, number>(
  open,
  whole("pieces"),
  (node) =>
    /^\D/u.test(
      node.kind === "text"
        ? node.text.trim()
        : node.kind === "data" && typeof node.value === "string"
          ? node.value
          : "1",
    ),
  (value): value is OpenNumber => typeof value === "string",
);

const piece = group<JobPiece>({
  number,
  name: words(60),
  finishedLength: length,
  hemEachEnd: lengthOrNone,
  fringeEachEnd: lengthOrNone,
  fringeTwist: loss,
  atLoom: length,
  weft,
  picks: picksPerLength,
});

export const pieces: Form<readonly JobPiece[]> = list("pieces", piece);

export const betweenPieces: Form<BetweenPieces> = text<BetweenPieces>("a length or picks", "4 picks of white", {
  read: (written) => {
    const of = written.indexOf(" of ");
    const size = of < 0 ? written : written.slice(0, of);
    const yarn = of < 0 ? {} : { weft: readHand(written.slice(of + " of ".length)) };
    const picks = /^(\d{1,6}) picks?$/u.exec(size)?.[1];
    if (picks === undefined) return { length: lengthNotation.read(size), ...yarn };
    if (Number(picks) === 0) throw new Unreadable("Leave the key out where nothing is woven between.", "out-of-range");
    return { picks: Number(picks), ...yarn };
  },
  write: ({ length: measured, picks, weft: yarn }) => {
    const size = measured === undefined ? "" : lengthNotation.write(measured);
    const counted = picks === undefined ? size : `${size}${String(picks)} ${picks === 1 ? "pick" : "picks"}`;
    return yarn === undefined ? counted : `${counted} of ${handText(yarn)}`;
  },
});

/** What each key of `pieces.*` means, for the schema. */
export const pieceMeans: Meanings = {
  number: "How many; left out, one is shown with what each more adds.",
  name: "What it is.",
  finishedLength: "Its finished length, without fringe.",
  hemEachEnd: "Turned in at each end, finished.",
  fringeEachEnd: "Warp left unwoven at each end.",
  fringeTwist: "A fringe before and after it is twisted: for the finished fringe alone.",
  atLoom: "Woven so long and no piece: a header, a sample.",
  weft: "Its own weft.",
  picks: "Its own picks.",
};
