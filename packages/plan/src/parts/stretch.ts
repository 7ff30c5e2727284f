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

export type Place = Stretch & { readonly places: 0 | 1 };

const TAKES: readonly Standing[] = ["joined", "added", "broken", "mended", "second on one knot", "threaded"];

/** Whether a place takes a new end. */
export function takesNewEnd({ standing }: Stretch): boolean {
  return TAKES.includes(standing);
}

export function placeOf(standing: Standing, found: Partial<Stretch> = {}): Place {
  return { standing, newEnd: null, oldEnd: null, oldPlace: null, shaft: null, ...found, places: 1 };
}

/** Each place of a table in turn, and what stands between places. */
export function eachPlace(stretches: readonly Stretch[], see: (place: Stretch) => void): void {
  const on = (number: number | null, by: number): number | null => (number === null ? null : number + by);
  for (const stretch of stretches) {
    if (stretch.places === 0) see(stretch);
    for (let by = 0; by < stretch.places; by += 1) {
      const { newEnd, oldEnd, oldPlace } = stretch;
      see({ ...stretch, places: 1, newEnd: on(newEnd, by), oldEnd: on(oldEnd, by), oldPlace: on(oldPlace, by) });
    }
  }
}

/** Places added before end 1. */
export function addedBefore(stretches: readonly Stretch[]): number {
  const [first] = stretches;
  return first?.standing === "added" ? first.places : 0;
}
