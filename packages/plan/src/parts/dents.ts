import type { Sleyed } from "../job/loom.js";
import type { WarpFault } from "../job/old-warp.js";
import type { Runs } from "../job/runs.js";
import { isOpen, laid } from "./laid.js";
import { SLEY } from "./laid-dents.js";
import { bareRepeat } from "./laid-heddles.js";
import type { LaidStripe } from "./laid-stripes.js";
import { addedBefore, eachPlace, takesNewEnd } from "./stretch.js";
import type { Table } from "./table.js";

/** The dent of every new end, counted from that of end 1, empty dents among them. */
export interface Dents {
  readonly dents: readonly (number | null)[];
  /** Ends that a sley written whole holds, and ends that it has to hold; alike for one repeated. */
  readonly holds: number;
  readonly wanted: number;
  /** Stretches written by their ends whose last dent is not full: that dent, as written from the first. */
  readonly notFull: readonly number[];
}

/** The dent of a place of the sley, the first of the old places being 0; null past a sley written whole. */
type DentAt = (position: number) => number | null;

function bare(order: readonly number[]): DentAt {
  const ofOrder = order.flatMap((ends, dent) => Array.from({ length: ends }, () => dent));
  const ends = ofOrder.length;
  return (position) => {
    const round = Math.floor(position / ends);
    return round * order.length + (ofOrder[position - round * ends] ?? 0);
  };
}

function whole(list: Runs<Sleyed>, places: number): { readonly dentAt: DentAt } & Pick<Dents, "holds" | "notFull"> {
  const { runs, size } = laid(list, SLEY, isOpen(list, SLEY) ? places : undefined);
  const byPlace: number[] = [];
  const notFull: number[] = [];
  let before = 0;
  for (const { dents, at, ends } of runs) {
    for (let end = 0; end < ends; end += 1) byPlace.push(before + Math.floor(end / at));
    before += dents;
    if (ends < dents * at) notFull.push(before);
  }
  return { dentAt: (position) => byPlace[position] ?? null, holds: size, notFull };
}

/** Counted from the dent of end 1. */
function fromEndOne(dents: readonly (number | null)[]): readonly (number | null)[] {
  const first = dents.find((dent) => dent !== null) ?? 0;
  return dents.map((dent) => (dent === null ? null : dent - first + 1));
}

/** Ends that a sley written whole has to hold: the old places with what is added or dropped at the sides. */
function placesOfSley({ stretches, newEnds, oldPlaces }: Table): number {
  if (oldPlaces === 0) return newEnds;
  const of = (standing: string): number =>
    stretches.reduce((sum, one) => (one.standing === standing ? sum + one.places : sum), 0);
  return oldPlaces + of("added") - of("dropped");
}

/**
 * The dent of every new end by a sley that says how many ends stand in each dent.
 *
 * @param faults ends that stand in another dent and stay there; that dent is counted from the one of old end 1
 */
export function dentsByPlace(list: Runs<Sleyed>, table: Table, faults: readonly WarpFault[] = []): Dents {
  const order = bareRepeat(list);
  const wanted = placesOfSley(table);
  const written = order === null ? whole(list, wanted) : { dentAt: bare(order), holds: wanted, notFull: [] };
  const elsewhere = new Map(
    faults.flatMap((fault) =>
      fault.is === "in another dent" && fault.mend !== true ? [[fault.end, fault.dent] as const] : [],
    ),
  );
  const before = addedBefore(table.stretches);
  const ofOldEndOne = written.dentAt(order === null ? before : 0) ?? 0;
  const dents: (number | null)[] = [];
  let position = (order === null ? 0 : -before) - 1;
  eachPlace(table.stretches, (place) => {
    const isDropped = place.standing === "dropped";
    if (order !== null && place.oldPlace !== null) position = place.oldPlace - 1;
    else if (place.standing === "added" || (place.oldPlace !== null && !isDropped)) position += 1;
    if (!takesNewEnd(place)) return;
    const found = place.standing === "joined" ? elsewhere.get(place.oldEnd ?? 0) : undefined;
    // A place made where the first end was left out stands in the dent of the next.
    dents.push(
      found === undefined ? written.dentAt(Math.max(position, order === null ? 0 : -before)) : ofOldEndOne + found - 1,
    );
  });
  return { dents: fromEndOne(dents), holds: written.holds, wanted, notFull: written.notFull };
}

/** The dent of every new end by the yarns of the stripes, each of which begins a new dent. */
export function dentsByYarn(sley: Readonly<Record<string, number>>, stripes: readonly LaidStripe[]): Dents {
  const dents: (number | null)[] = [];
  let before = 0;
  for (const { yarns, ends } of stripes) {
    const [yarn = ""] = yarns;
    const at = (Object.hasOwn(sley, yarn) ? sley[yarn] : sley["others"]) ?? null;
    for (let end = 0; end < ends; end += 1) dents.push(at === null ? null : before + Math.floor(end / at) + 1);
    before += at === null ? 0 : Math.ceil(ends / at);
  }
  return { dents, holds: dents.length, wanted: dents.length, notFull: [] };
}

/** From the dent of end 1 to the last that holds an end. */
export function lastDent({ dents }: Dents): number {
  return dents.reduce<number>((last, dent) => Math.max(last, dent ?? 0), 0);
}
