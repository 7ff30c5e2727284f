import { atLeastZero, oneOf, readInputs } from "../../engine/formula/index.js";
import type { Source } from "../../engine/formula/index.js";
import { frozen } from "../../engine/frozen.js";
import { difference, inUnit, quantityText, sign, unitOf } from "../../engine/quantity/index.js";
import type { Unit } from "../../engine/quantity/index.js";
import { avlHomeLoom, commonPractice, notesFromTheFell } from "../../sources/index.js";
import { centimetres, inches, Length, metres, millimetres } from "../../units/index.js";
import type { KnotsTied } from "./waste-by-knots.js";

export interface OldWarpLeftInput {
  readonly knotsTied: KnotsTied;
  /** Of old warp out of the reed, to the front, after the cut. */
  readonly pastReed: Length;
  /** Of old warp behind the heddles, after the cut. */
  readonly behindHeddles: Length;
}

/** Whether the old warp left in the loom is long enough to be tied to. */
export interface OldWarpLeft {
  /** What must stand past the reed and behind the heddles; nothing where no figure is known. */
  readonly mustStand: { readonly pastReed: Length; readonly behindHeddles: Length };
  /** What is lacking; nothing where it reaches. */
  readonly short: { readonly pastReed: Length; readonly behindHeddles: Length };
  /** Null behind the reed: what must stand there is said, not compared. */
  readonly reaches: boolean | null;
  /** Other places of the knots that what is left would do for. */
  readonly instead: readonly KnotsTied[];
  readonly says: string;
  readonly source: Source;
}

interface Needed {
  readonly pastReed: Length;
  readonly behindHeddles: Length;
  readonly says: string;
  readonly source: Source;
}

const PLACES = ["in front of the reed", "behind the reed", "behind the heddles"] as const;

const METRIC: readonly Unit<"length">[] = [millimetres, centimetres, metres];

/** As the sources print it, in both units; that of what was measured comes first. */
function inBoth(inInches: number, inCentimetres: number, measured: Length): string {
  const [imperial, metric] = [`${String(inInches)} in`, `${String(inCentimetres)} cm`];
  return METRIC.some(({ name }) => name === unitOf(measured).name)
    ? `${metric} (${imperial})`
    : `${imperial} (${metric})`;
}

/** What must stand for each place of the knots. */
function neededAt(place: KnotsTied, measured: Length): Needed {
  const none = inches(0);
  if (place === "in front of the reed")
    return {
      pastReed: inches(8),
      behindHeddles: none,
      source: notesFromTheFell,
      says: `${inBoth(8, 20, measured)} past the reed`,
    };
  if (place === "behind the reed")
    return {
      pastReed: none,
      behindHeddles: none,
      source: commonPractice,
      says: "a hand's length before the heddles",
    };
  return {
    pastReed: inches(6),
    behindHeddles: inches(12),
    source: avlHomeLoom,
    says: `${inBoth(12, 30, measured)} behind the heddles and ${inBoth(6, 15, measured)} past the reed`,
  };
}

/** In the unit of what is left, which is measured. */
function lacking(needed: Length, left: Length): Length {
  const unit = unitOf(left);
  const short = inUnit(difference(needed, left), unit);
  return sign(short) > 0 ? short : unit(0);
}

function shortAt(place: KnotsTied, left: OldWarpLeftInput): OldWarpLeft["short"] {
  const { pastReed, behindHeddles } = neededAt(place, left.pastReed);
  return {
    pastReed: lacking(pastReed, left.pastReed),
    behindHeddles: lacking(behindHeddles, left.behindHeddles),
  };
}

/** As far as a tape shows it, and no less than it is. */
function shortText(length: Length): string {
  return quantityText(length, { step: "0.1", rounding: "roundUp" });
}

function isNone({ pastReed, behindHeddles }: OldWarpLeft["short"]): boolean {
  return sign(pastReed) === 0 && sign(behindHeddles) === 0;
}

/**
 * Whether the old warp left past the reed and behind the heddles is long enough for the place of the knots, by how much it is
 * short, and which other place would do. Behind the reed what must stand is only said: no figure of it was found.
 *
 * @param input where the knots are to be tied, and what is left of the old warp at both sides
 * @throws QuantityError for a field that is missing, unknown or of another kind, one error for all
 * @source avl-home-loom
 * @example
 * const left = { pastReed: centimetres(18), behindHeddles: centimetres(35) };
 * oldWarpLeft({ knotsTied: "behind the heddles", ...left }).reaches // true
 */
export function oldWarpLeft(input: OldWarpLeftInput): OldWarpLeft {
  const declared = {
    knotsTied: oneOf(PLACES, "where the knots are tied"),
    pastReed: atLeastZero(Length, "of old warp out of the reed, to the front, after the cut"),
    behindHeddles: atLeastZero(Length, "of old warp behind the heddles, after the cut"),
  };
  readInputs("oldWarpLeft", declared, input);
  const { knotsTied } = input;
  const { pastReed, behindHeddles, says: must, source } = neededAt(knotsTied, input.pastReed);
  const short = shortAt(knotsTied, input);
  const isSaid = knotsTied === "behind the reed";
  const reaches = isSaid ? null : isNone(short);
  const compared = PLACES.filter((place) => place !== knotsTied && place !== "behind the reed");
  const instead = compared.filter((place) => isNone(shortAt(place, input)));
  const lacks = [
    sign(short.pastReed) === 0 ? "" : `${shortText(short.pastReed)} short past the reed`,
    sign(short.behindHeddles) === 0 ? "" : `${shortText(short.behindHeddles)} short behind the heddles`,
  ].filter(Boolean);
  const stands = `${quantityText(input.pastReed)} past the reed, ${quantityText(input.behindHeddles)} behind the heddles`;
  const verdict = isSaid
    ? ` There will stand ${stands}.`
    : lacks.length === 0
      ? ` It reaches: ${stands}.`
      : ` It is ${lacks.join(" and ")}.`;
  const other = lacks.length > 0 && instead.length > 0 ? ` Tied ${instead.join(" or ")} it would do.` : "";
  return frozen({
    mustStand: { pastReed, behindHeddles },
    short,
    reaches,
    instead,
    says: `Tied ${knotsTied}, the old warp must stand ${must}.${verdict}${other}`,
    source,
  });
}
