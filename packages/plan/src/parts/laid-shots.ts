import {
  QuantityError,
  difference,
  inches,
  lengthOfPicks,
  picksInLength,
  picksOfStripe,
  sign,
  sum,
  times,
  wovenLength,
} from "@thrum/maths";
import type { Length, Loss, PicksPerLength } from "@thrum/maths";
import { waits } from "../core/waits.js";
import type { Hand, Runs } from "../job/runs.js";
import type { JobWeft, Shots } from "../job/weft.js";
import { isOpen, laid, laidWith } from "./laid.js";
import type { RunKind } from "./laid.js";
import { handOf, isSameHand } from "./laid-stripes.js";

/** A stripe of the weft as it is woven. */
export interface LaidShots extends Hand {
  readonly picks: number;
  /** What is beaten in picks of its own takes so much of the piece; null where it is beaten as the piece. */
  readonly apart: Length | null;
}

interface Given {
  readonly runs: Runs<Shots>;
  readonly woven: Length;
  readonly picksInAll: number;
  readonly picks: PicksPerLength;
  readonly lengths: JobWeft["lengths"] | null;
  readonly loss: Loss | null;
}

function refuse(expected: string, received: string): never {
  throw new QuantityError({
    code: "out-of-range",
    function: "laidShots",
    path: ["stripes"],
    expected,
    received,
    remedy: "",
  });
}

/** A length of a stripe at weaving tension. */
function atLoom(length: Length, { lengths, loss }: Given): Length {
  if (lengths === null || lengths === undefined) return waits("weft", "lengths");
  if (lengths === "at the loom") return length;
  if (loss === null) return waits("cloth", "lengthLoomToFinished");
  return wovenLength({ finishedLength: length, hemEachEnd: times(length, 0), loomToFinished: loss });
}

/** Shots in turn on the way back: the one that came last comes first, an odd shot over too. */
function turnedShots(shots: LaidShots): LaidShots {
  const { yarns, order, picks } = shots;
  if (order === undefined) return shots;
  const hand = yarns.length;
  const last = Math.max(picks - 1, 0);
  const turned = yarns.map((_, at) => yarns[(last + hand - at) % hand] ?? "");
  return { ...shots, yarns: turned };
}

/** Shots in turn begin anew with their first yarn in every stripe, so that only whole rounds run on. */
function together(one: LaidShots, other: LaidShots): LaidShots | null {
  const runsOn = one.order === undefined || one.picks % one.yarns.length === 0;
  if (!isSameHand(one, other) || !runsOn) return null;
  const picks = one.picks + other.picks;
  if (one.apart === null && other.apart === null) return { ...one, picks };
  return null;
}

function shotsKind(given: Given): RunKind<Shots, LaidShots> {
  const closed = (shots: Shots, open: number): LaidShots => {
    const hand = handOf(shots);
    const { picks, length, at } = shots;
    if (picks === "the rest") return { ...hand, picks: open, apart: null };
    const cloth = length === undefined ? null : atLoom(length, given);
    const beaten = at ?? given.picks;
    const number = cloth === null ? (picks ?? given.picksInAll) : picksOfStripe({ wovenLength: cloth, picks: beaten });
    if (at === undefined) return { ...hand, picks: number, apart: null };
    return { ...hand, picks: number, apart: cloth ?? lengthOfPicks({ picksInAll: number, picks: at }) };
  };
  return {
    counted: "picks",
    isOpen: ({ picks }) => picks === "the rest",
    closed,
    size: ({ picks, apart }) => (apart === null ? picks : 0),
    isNothing: ({ picks, apart }) => picks === 0 && apart === null,
    turned: turnedShots,
    together,
    placed: (shots) => shots,
  };
}

/** Cloth that is beaten in picks of its own: it comes off the piece first. */
function clothApart(stripes: readonly LaidShots[]): Length {
  return stripes.reduce((so, { apart }) => (apart === null ? so : sum(so, apart)), inches(0));
}

/** The stripes of one piece: picks as written, lengths to the nearest pick, `the rest` what is over. */
export function laidShots(given: Given): readonly LaidShots[] {
  const { runs, woven, picks, picksInAll } = given;
  const kind = shotsKind(given);
  const own = clothApart(laidWith(runs, kind, 0));
  const hasOpen = isOpen(runs, kind);
  if (hasOpen && clothApart(laidWith(runs, kind, 1)).value !== own.value)
    refuse("an open place beaten as the piece", "one with picks of its own in it");
  const room = sign(own) === 0 ? picksInAll : picksInLength({ wovenLength: difference(woven, own), picks });
  const { runs: stripes, size } = laid(runs, kind, hasOpen ? room : undefined);
  return size <= room ? stripes : refuse(`stripes of at most ${String(room)} picks`, `stripes of ${String(size)}`);
}

/** Whole picks of the piece that no stripe says anything of; none where some are beaten in picks of their own. */
export function picksLeftOver(stripes: readonly LaidShots[], picksInAll: number): number | null {
  if (stripes.some(({ apart }) => apart !== null)) return null;
  return picksInAll - stripes.reduce((so, { picks }) => so + picks, 0);
}

/** A stripe of the weft by its picks, counted from the first of the piece. */
export interface ShotsFromTo extends LaidShots {
  readonly firstPick: number;
  readonly lastPick: number;
}

export function shotsFromTo(stripes: readonly LaidShots[]): readonly ShotsFromTo[] {
  let before = 0;
  return stripes.map((stripe) => {
    const firstPick = before + 1;
    before += stripe.picks;
    return { ...stripe, firstPick, lastPick: before };
  });
}
