import { oldWarpInOrder } from "./old-warp-in-order.js";
import type { OldWarpFound } from "./old-warp-in-order.js";
import { placeOf, takesNewEnd } from "./stretch.js";
import type { Place, Standing, Stretch } from "./stretch.js";

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

function paired(places: readonly Place[], pairs: readonly Paired[]): readonly Place[] {
  const byPlace = new Map(pairs.map(({ oldPlace, more }) => [oldPlace, more]));
  return places.flatMap((place) => {
    const more = place.oldPlace === null ? 0 : (byPlace.get(place.oldPlace) ?? 0);
    if (more < 0) return [{ ...place, standing: "cut back" as const }];
    const second = placeOf("second on one knot", { oldEnd: place.oldEnd });
    return [place, ...Array.from({ length: more }, () => second)];
  });
}

/** So many outermost places that take a new end, dropped. */
function dropped(places: readonly Place[], number: number): readonly Place[] {
  let left = number;
  return places.map((place) => {
    if (left <= 0 || !takesNewEnd(place)) return place;
    left -= 1;
    return { ...place, standing: "dropped" as const };
  });
}

function reversed<T>(list: readonly T[]): readonly T[] {
  return [...list].reverse();
}

/** Neighbours alike as one stretch. */
function stretchesOf(places: readonly Place[]): readonly Stretch[] {
  const stretches: Stretch[] = [];
  for (const place of places) {
    const last = stretches.at(-1);
    const runsOn = (field: "newEnd" | "oldEnd" | "oldPlace"): boolean => {
      const before = last?.[field] ?? null;
      return place[field] === (before === null ? null : before + (last?.places ?? 0));
    };
    const isAlike = last?.standing === place.standing && last.shaft === null && place.shaft === null;
    if (last !== undefined && isAlike && place.places > 0 && runsOn("newEnd") && runsOn("oldEnd") && runsOn("oldPlace"))
      stretches[stretches.length - 1] = { ...last, places: last.places + 1 };
    else stretches.push(place);
  }
  return stretches;
}

function tableOf(places: readonly Place[], oldPlaces: number): Table {
  let newEnds = 0;
  const numbered = places.map((place) => (takesNewEnd(place) ? { ...place, newEnd: (newEnds += 1) } : place));
  const of = (...these: readonly Standing[]): number =>
    places.filter(({ standing }) => these.includes(standing)).length;
  const partners = of("added", "broken", "mended");
  return { stretches: stretchesOf(numbered), newEnds, oldPlaces, partners, seconds: of("second on one knot") };
}

/**
 * The loom places of a warp tied to an old one: the old warp as it was found, with what is added or dropped at its
 * sides and the heddles that hold another number of ends in the new cloth.
 */
export function tableTied(oldWarp: OldWarpFound, sides: AtSides, pairs: readonly Paired[] = []): Table {
  const found = oldWarpInOrder(oldWarp);
  const oldPlaces = found.filter(({ oldPlace }) => oldPlace !== null).length;
  const there = dropped(paired(found, pairs), -sides.before);
  const kept = reversed(dropped(reversed(there), -sides.after));
  const added = (number: number): readonly Place[] =>
    Array.from({ length: Math.max(0, number) }, () => placeOf("added"));
  return tableOf([...added(sides.before), ...kept, ...added(sides.after)], oldPlaces);
}

/** The loom places of a warp threaded afresh. */
export function tableAfresh(ends: number): Table {
  const places = Array.from({ length: ends }, (_, at) => placeOf("threaded", { oldPlace: at + 1 }));
  return tableOf(places, 0);
}
