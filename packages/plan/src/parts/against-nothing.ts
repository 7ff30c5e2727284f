import { asText, compare } from "@thrum/maths";
import type { Length } from "@thrum/maths";
import { inSmallUnit } from "./amount-words.js";
import type { EntryRow } from "./entry-rows.js";
import { counted, listed } from "./told.js";
import type { Told } from "./told.js";

interface Allowed {
  readonly entries: readonly EntryRow[];
  /** Of each entry the most there can be. */
  readonly pieces: readonly number[];
}

/** The open entry, where none of it can be woven. */
function noneOf({ entries, pieces }: Allowed, by: EntryRow["comesBy"]): EntryRow | undefined {
  return entries.find(({ comesBy, index }) => comesBy === by && (pieces[index] ?? 0) < 1);
}

/** A warp fixed beforehand that gives none of the open entry. */
export function noneFromWarp(
  given: Allowed & { readonly length: Length; readonly waste: Length; readonly more: Length | null },
): readonly Told[] {
  const open = noneOf(given, "the warp gives");
  if (open === undefined) return [];
  const [length, waste] = [asText(given.length), inSmallUnit(given.waste, "roundUp")];
  const isWaste = compare(given.length, given.waste) <= 0;
  const takes = given.more === null ? "" : `, and one takes ${inSmallUnit(given.more, "roundUp")}`;
  const says = `${length} give no ${open.title}: ${isWaste ? `the waste alone is ${waste}` : `${waste} are waste`}${takes}.`;
  return [{ standing: "must", about: "warp", says, values: { length, waste } }];
}

/** Yarn on hand that gives none of the open entry. */
export function noneFromYarn(
  given: Allowed & { readonly names: readonly string[]; readonly there: readonly ("some" | "none")[] },
): readonly Told[] {
  const open = noneOf(given, "the yarn gives");
  if (open === undefined) return [];
  const none = given.names.filter((_, at) => given.there[at] === "none");
  const why = none.length === 0 ? "" : `: of ${listed(none)} there is none`;
  const says = `The yarn on hand gives no ${open.title}${why}.`;
  return [{ standing: "must", about: "yarn", says, values: { none } }];
}

/** Without stripes the ends are those that the old warp has places for. */
export function placesForStripes(places: number, hasStripes: boolean): readonly Told[] {
  if (hasStripes) return [];
  const says = `There are no stripes: reckoned with the ${counted(places, "place")} of the old warp.`;
  return [{ standing: "free", about: "stripes", says, values: { places } }];
}

/** Cloth does not grow wider than the reed holds it. */
export function widerThanReed(found: Length, inReed: Length): readonly Told[] {
  if (compare(found, inReed) <= 0) return [];
  const [width, reed] = [asText(found), inSmallUnit(inReed)];
  const says = `Found at the fell: ${width}, wider than the ${reed} in the reed. Measure again, or count the dents.`;
  return [{ standing: "ask", about: "first inches", says, values: { found: width, reed } }];
}
