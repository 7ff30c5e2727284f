import { oldWarpInOrder } from "./old-warp-in-order.js";
import type { OldWarpFound } from "./old-warp-in-order.js";
import { eachPlace, split, stretchOf, takesNewEnd } from "./stretch.js";
import type { Standing, Stretch } from "./stretch.js";

/** The loom places from end 1's side: nothing else numbers ends. */
export interface Table {
  readonly stretches: readonly Stretch[];
  readonly newEnds: number;
  readonly oldPlaces: number;
  /** New ends without an old one, which get a partner before tying. */
  readonly partners: number;
  /** Second new ends on one knot. */
  readonly seconds: number;
}

/** Ends added at the two sides, less than none dropped. */
export interface AtSides {
  readonly before: number;
  readonly after: number;
}

/** An old place whose heddle holds more, or fewer, ends in the new cloth. */
export interface Paired {
  readonly oldPlace: number;
  /** Second new ends on its knot; below none, it is cut back. */
  readonly more: number;
}

/** Second new ends put on their knots, later old ends of a pair cut back. */
function paired(stretches: readonly Stretch[], pairs: readonly Paired[]): readonly Stretch[] {
  if (pairs.length === 0) return stretches;
  const byPlace = new Map(pairs.map(({ oldPlace, more }) => [oldPlace, more]));
  const made: Stretch[] = [];
  eachPlace(stretches, (place) => {
    const more = place.oldPlace === null ? 0 : (byPlace.get(place.oldPlace) ?? 0);
    made.push(more < 0 ? { ...place, standing: "cut back" } : place);
    for (let second = 0; second < more; second += 1)
      made.push(stretchOf("second on one knot", 1, { oldEnd: place.oldEnd }));
  });
  return made;
}

/** So many outermost places that take a new end, dropped at the one side or the other. */
function dropped(stretches: readonly Stretch[], number: number, side: "before" | "after"): readonly Stretch[] {
  let left = Math.max(0, number);
  const fromThere = side === "before" ? stretches : [...stretches].reverse();
  const kept = fromThere.flatMap((stretch): readonly Stretch[] => {
    if (left === 0 || !takesNewEnd(stretch)) return [stretch];
    const taken = Math.min(left, stretch.places);
    left -= taken;
    const [one, other] = split(stretch, side === "before" ? taken : stretch.places - taken);
    const parts: readonly Stretch[] =
      side === "before" ? [{ ...one, standing: "dropped" }, other] : [{ ...other, standing: "dropped" }, one];
    return parts.filter(({ places }) => places > 0);
  });
  return side === "before" ? kept : kept.reverse();
}

/** Neighbours alike as one stretch. */
function together(stretches: readonly Stretch[]): readonly Stretch[] {
  const made: Stretch[] = [];
  for (const stretch of stretches) {
    const last = made.at(-1);
    const runsOn = (field: "newEnd" | "oldEnd" | "oldPlace"): boolean => {
      const before = last?.[field] ?? null;
      return stretch[field] === (before === null ? null : before + (last?.places ?? 0));
    };
    const isAlike = last?.standing === stretch.standing && last.shaft === null && stretch.shaft === null;
    const isOne = isAlike && stretch.places > 0 && runsOn("newEnd") && runsOn("oldEnd") && runsOn("oldPlace");
    if (last !== undefined && isOne) made[made.length - 1] = { ...last, places: last.places + stretch.places };
    else made.push(stretch);
  }
  return made;
}

function tableOf(stretches: readonly Stretch[], oldPlaces: number): Table {
  let newEnds = 0;
  const numbered = stretches.map((stretch) => {
    if (!takesNewEnd(stretch)) return stretch;
    newEnds += stretch.places;
    return { ...stretch, newEnd: newEnds - stretch.places + 1 };
  });
  const of = (...these: readonly Standing[]): number =>
    stretches.reduce((sum, { standing, places }) => (these.includes(standing) ? sum + places : sum), 0);
  const partners = of("added", "broken", "mended");
  return { stretches: together(numbered), newEnds, oldPlaces, partners, seconds: of("second on one knot") };
}

/**
 * The loom places of a warp tied to an old one: the old warp as it was found, with what is added or dropped at its
 * sides and the heddles that hold another number of ends in the new cloth.
 */
export function tableTied(oldWarp: OldWarpFound, sides: AtSides, pairs: readonly Paired[] = []): Table {
  const found = oldWarpInOrder(oldWarp);
  const oldPlaces = found.reduce((sum, { oldPlace, places }) => (oldPlace === null ? sum : sum + places), 0);
  const there = dropped(paired(found, pairs), -sides.before, "before");
  const kept = dropped(there, -sides.after, "after");
  const added = (number: number): readonly Stretch[] => (number > 0 ? [stretchOf("added", number)] : []);
  return tableOf([...added(sides.before), ...kept, ...added(sides.after)], oldPlaces);
}

/** The loom places of a warp threaded afresh. */
export function tableAfresh(ends: number): Table {
  return tableOf([stretchOf("threaded", ends, { oldPlace: 1 })], 0);
}
