import type { Addition, Length, PicksPerLength } from "@thrum/maths";
import { addition } from "./percents.js";
import { isLength, length, lengthNotation } from "./amounts.js";
import { Unreadable } from "./fault.js";
import { text } from "./form.js";
import type { Form, Notation } from "./form.js";
import { oneOf } from "./forms.js";
import { group } from "./group.js";
import { handText } from "./hand-text.js";
import { numberAndRest, readHand } from "./hand.js";
import type { Node } from "./node.js";
import { opened } from "./node.js";
import { picksNotation } from "./per-length.js";
import type { Hand, Runs } from "./runs.js";
import { isMirrored, isRepeated } from "./runs.js";
import { runs } from "./runs-form.js";
import type { Meanings } from "./meaning.js";
import { jobWords } from "./job-words.js";

/** Shots of one yarn, or of several: in one shot, or shot by shot in turn. Neither picks nor length: all of the piece. */
export interface Shots extends Hand {
  readonly picks?: number | "the rest";
  readonly length?: Length;
  /** Its own, where they are not those of the piece. */
  readonly at?: PicksPerLength;
}

/** The weft of one piece, from its first pick to its last. */
export interface JobWeft {
  readonly stripes?: Runs<Shots>;
  /** Where the lengths of the stripes are measured. */
  readonly lengths?: "finished" | "at the loom";
  readonly allowance?: Addition;
  /** Lost at the two tails of every stripe, for each of its yarns. */
  readonly eachStripe?: Length;
}

function sizeAndHand(written: string): Shots {
  const of = written.indexOf(" of ");
  const before = written.slice(0, Math.max(of, 0));
  if (isLength(before)) return { length: lengthNotation.read(before), ...readHand(written.slice(of + " of ".length)) };
  const found = numberAndRest(written);
  if (found === null) return readHand(written);
  const [picks, rest] = found;
  return { picks, ...readHand(rest) };
}

const notation: Notation<Shots> = {
  read: (written) => {
    const [before = "", at, more] = written.split(" at ");
    const shots = sizeAndHand(before);
    if (at === undefined) return shots;
    const isWhole = shots.picks === undefined && shots.length === undefined;
    if (isWhole || more !== undefined)
      throw new Unreadable("Picks of its own belong to a stripe: write 3 cm of black at 6 per cm.");
    return { ...shots, at: picksNotation.read(at) };
  },
  write: ({ picks, length: measured, at, ...hand }) => {
    const size =
      measured === undefined
        ? picks === undefined
          ? ""
          : `${String(picks)} `
        : `${lengthNotation.write(measured)} of `;
    return `${size}${handText(hand)}${at === undefined ? "" : ` at ${picksNotation.write(at)}`}`;
  },
};

const allOfThePiece = ({ picks, length: measured }: Shots): boolean => picks === undefined && measured === undefined;

const shots: Form<Runs<Shots>> = runs<Shots>({
  noun: "picks",
  run: text("picks, or a length, and their yarn", "12 madder", notation),
  isOpen: ({ picks }) => picks === "the rest",
  measured: () => ({ size: 1, of: null, turned: null }),
  standsAlone: allOfThePiece,
});

const asGroup = group<JobWeft>({
  stripes: shots,
  lengths: oneOf(...jobWords["weft.lengths"]),
  allowance: addition,
  eachStripe: length,
});

/** One yarn all of the piece, or a group. */
export const weft: Form<JobWeft> = {
  shape: { kind: "either", ways: [asGroup, shots] },
  read: (node: Node, at) => {
    if (opened(node).kind === "group" || node.kind === "data" || opened(node).kind === "nothing")
      return asGroup.read(node, at);
    const stripes = shots.read(node, at);
    return stripes === null ? null : { stripes };
  },
  write: (value) => {
    const { stripes, ...others } = value;
    const [first] = stripes ?? [];
    const isOne = stripes?.length === 1 && first !== undefined && !isRepeated(first) && !isMirrored(first);
    const isAlone = Object.keys(others).length === 0;
    return isOne && isAlone ? shots.write(stripes) : asGroup.write(value);
  },
};

/** What each key of `weft` means, for the schema. */
export const weftMeans: Meanings = {
  stripes: "Picks or lengths of a yarn, or one yarn all of the piece.",
  lengths: "Where the lengths of the stripes are measured.",
  allowance: "Added for joins and bobbin ends.",
  eachStripe: "Lost at the two tails of every stripe, for each of its yarns.",
};
