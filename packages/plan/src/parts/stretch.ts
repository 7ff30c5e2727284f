/** What stands in a loom place, or beside the places without being one. */
export type Standing =
  /** A new end tied to an old one. */
  | "joined"
  /** A new end without an old one, outside the old warp. */
  | "added"
  /** A new end where the old one is broken. */
  | "broken"
  /** A broken place that takes no new end. */
  | "left empty"
  /** A place made where an end was left out. */
  | "mended"
  /** A second new end on the knot before it. */
  | "second on one knot"
  /** The later old end of a pair, or an old end outside the new warp: it takes no new end. */
  | "cut back"
  | "dropped"
  /** A new end in a loom without an old warp. */
  | "threaded"
  /** No places: a thread beside another in its heddle, a place the threading jumps, a heddle that only hangs there. */
  | "one too many"
  | "left out"
  | "empty heddle";

/** Places that follow each other and are alike, their numbers running on. */
export interface Stretch {
  readonly standing: Standing;
  /** None where what stands there is no place. */
  readonly places: number;
  /** Of the first of them; the number of a place is that of its new end. */
  readonly newEnd: number | null;
  /** As counted, threads that are there. */
  readonly oldEnd: number | null;
  /** As a threading and old stripes written whole count them. */
  readonly oldPlace: number | null;
  /** Where it was found to hang. */
  readonly shaft: number | null;
}

const TAKES: readonly Standing[] = ["joined", "added", "broken", "mended", "second on one knot", "threaded"];

/** Whether a place takes a new end. */
export function takesNewEnd({ standing }: Stretch): boolean {
  return TAKES.includes(standing);
}

export function stretchOf(standing: Standing, places: number, found: Partial<Stretch> = {}): Stretch {
  return { standing, newEnd: null, oldEnd: null, oldPlace: null, shaft: null, ...found, places };
}

/** The first so many of its places, and the others. */
export function split(stretch: Stretch, at: number): readonly [first: Stretch, others: Stretch] {
  const on = (number: number | null): number | null => (number === null ? null : number + at);
  const { newEnd, oldEnd, oldPlace, places } = stretch;
  const others = { ...stretch, places: places - at, newEnd: on(newEnd), oldEnd: on(oldEnd), oldPlace: on(oldPlace) };
  return [{ ...stretch, places: at }, others];
}

/** Each place of a table in turn, and what stands between places. */
export function eachPlace(stretches: readonly Stretch[], see: (place: Stretch) => void): void {
  for (const stretch of stretches) {
    const { standing, places, newEnd, oldEnd, oldPlace, shaft } = stretch;
    if (places === 0) see(stretch);
    for (let by = 0; by < places; by += 1)
      see({
        standing,
        places: 1,
        newEnd: newEnd === null ? null : newEnd + by,
        oldEnd: oldEnd === null ? null : oldEnd + by,
        oldPlace: oldPlace === null ? null : oldPlace + by,
        shaft,
      });
  }
}

/** Places added before end 1. */
export function addedBefore(stretches: readonly Stretch[]): number {
  const [first] = stretches;
  return first?.standing === "added" ? first.places : 0;
}
