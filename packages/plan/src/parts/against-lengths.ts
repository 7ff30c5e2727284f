import { asText, compare, difference, lengthInSteps, ratio, sign } from "@thrum/maths";
import type { Length } from "@thrum/maths";
import type { JobPiece } from "../job/pieces.js";
import { inSmallUnit } from "./amount-words.js";
import type { EntryRow } from "./entry-rows.js";
import { picksLeftOver } from "./laid-shots.js";
import type { LaidShots } from "./laid-shots.js";
import { counted, firstSix } from "./told.js";
import type { Told } from "./told.js";

/** A noun of the weaver's own in the plural, as far as English makes it. */
function named(number: number, title: string): string {
  return counted(number, title.startsWith("piece ") ? "piece" : title);
}

export interface WarpAgainstPieces {
  readonly length: Length;
  readonly needed: Length;
  /** Of the entry that grows with the warp; nothing where none or several do. */
  readonly pieces: number;
  readonly title: string | null;
  /** Warp for one piece more. */
  readonly more: Length | null;
}

/** Pieces against a warp fixed beforehand: the length stays, the shortage is told in pieces. */
export function againstWarp({ length, needed, pieces, title, more }: WarpAgainstPieces): readonly Told[] {
  const whole = asText(length);
  if (compare(length, needed) >= 0) {
    const left = difference(length, needed);
    const over = inSmallUnit(left, "roundDown");
    if (title === null || sign(left) === 0) return [];
    const says = `${whole} give ${named(pieces, title)}; ${over} are over.`;
    return [{ standing: "free", about: "warp", says, values: { length: whole, pieces, over } }];
  }
  const short = inSmallUnit(difference(needed, length), "roundUp");
  if (title === null || more === null || sign(more) === 0) {
    const says = `${whole} are too short for the pieces: ${short} more are needed.`;
    return [{ standing: "must", about: "warp", says, values: { length: whole, short } }];
  }
  const fewer = Math.round(ratio(lengthInSteps({ needed: difference(needed, length), step: more }), more));
  const gives = pieces - fewer;
  const says =
    gives < 1
      ? `${whole} give no ${title}; ${named(pieces, title)} need ${short} more.`
      : `${whole} give ${named(gives, title)}; ${String(pieces)} need ${short} more.`;
  return [{ standing: "must", about: "warp", says, values: { length: whole, pieces, gives, short } }];
}

/** A warp fixed beforehand that is no whole number of steps from peg to peg. */
export function againstStep(length: Length, step: Length): readonly Told[] {
  const inSteps = lengthInSteps({ needed: length, step });
  if (compare(inSteps, length) === 0) return [];
  const [whole, of, next] = [asText(length), asText(step), asText(inSteps)];
  const says = `${whole} is no whole number of steps of ${of}: the next is ${next}. Reckoned with ${whole}.`;
  return [{ standing: "check", about: "step", says, values: { length: whole, step: of, next } }];
}

/** What whole steps bring above what is needed. */
export function surplusOfSteps(needed: Length, step: Length): readonly Told[] {
  const inSteps = lengthInSteps({ needed, step });
  if (compare(inSteps, needed) === 0) return [];
  const number = Math.round(ratio(inSteps, step));
  const over = inSmallUnit(difference(inSteps, needed), "roundDown");
  const says = `Wound in ${counted(number, "step")} of ${asText(step)}, ${over} of every end are over.`;
  return [{ standing: "free", about: "step", says, values: { steps: number, step: asText(step), over } }];
}

/** Hem and fringe on one piece; fringes that the waste could give. */
export function againstEdges(pieces: readonly JobPiece[]): readonly Told[] {
  const has = (length: Length | undefined): boolean => length !== undefined && sign(length) !== 0;
  const name = ({ name: own }: JobPiece, at: number): string => own ?? `piece ${String(at + 1)}`;
  const both = pieces.flatMap((piece, at) =>
    has(piece.hemEachEnd) && has(piece.fringeEachEnd) ? [name(piece, at)] : [],
  );
  const ends = [
    has(pieces[0]?.fringeEachEnd) ? "first" : null,
    has(pieces.at(-1)?.fringeEachEnd) ? "last" : null,
  ].filter((one) => one !== null);
  const hemmed: Told = {
    standing: "check",
    about: "hem and fringe",
    says: `Hem and fringe on one piece: ${firstSix(both)}. Both are reckoned; is that meant?`,
    values: { pieces: both },
  };
  const spared: Told = {
    standing: "free",
    about: "fringe",
    says: `The ${ends.join(" and the ")} fringe could come out of the waste; it is reckoned beside it.`,
    values: { fringes: ends },
  };
  return [...(both.length === 0 ? [] : [hemmed]), ...(ends.length === 0 ? [] : [spared])];
}

/** Weft stripes that leave picks of their piece over. */
export function againstWeft(given: {
  readonly entries: readonly EntryRow[];
  readonly kinds: readonly string[];
  readonly laid: readonly (readonly LaidShots[] | null)[];
  readonly picks: readonly (number | null)[];
}): readonly Told[] {
  return given.entries.flatMap(({ title }, at): readonly Told[] => {
    const [laid, picksInAll] = [given.laid[at] ?? null, given.picks[at] ?? null];
    if (given.kinds[at] !== "striped" || laid === null || picksInAll === null) return [];
    const over = picksLeftOver(laid, picksInAll) ?? 0;
    if (over <= 0) return [];
    const says = `The weft stripes of ${title} come to ${counted(picksInAll - over, "pick")}, the piece has ${String(picksInAll)}: ${counted(over, "pick is", "picks are")} left, and no stripe says of what. Write the rest.`;
    return [{ standing: "check", about: "weft", says, values: { picksInAll, over } }];
  });
}
