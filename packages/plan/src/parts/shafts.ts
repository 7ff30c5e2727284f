import type { Threaded } from "../job/loom.js";
import type { WarpFault } from "../job/old-warp.js";
import type { Runs } from "../job/runs.js";
import { isOpen, laid } from "./laid.js";
import { THREADING, bareRepeat } from "./laid-heddles.js";
import { addedBefore, eachPlace, takesNewEnd } from "./stretch.js";
import type { Table } from "./table.js";

/** Where an end hangs. */
export type Hangs = number | "floating" | "not known";

/** The shaft of every new end, from end 1. */
export interface Shafts {
  readonly shafts: readonly Hangs[];
  /** New ends that share the heddle of the end before. */
  readonly sharing: readonly number[];
  /** The place of every new end in the repeat, from 1; none where the threading is written whole. */
  readonly placeInRepeat: readonly number[];
  /** Ends of the repeat; 0 where the threading is written whole. */
  readonly repeat: number;
}

/** A threading as it stands: which shaft a place counts on, the first of the old places being 0. */
interface Threading {
  at(position: number): Hangs;
  sharesBefore(position: number): boolean;
  /** A bare repeat goes on outward, and counts a place that was left out. */
  readonly isBare: boolean;
  readonly repeat: number;
}

function bare(repeat: readonly number[]): Threading {
  const { length } = repeat;
  const at = (position: number): Hangs => repeat[((position % length) + length) % length] ?? "not known";
  return { at, sharesBefore: () => false, isBare: true, repeat: length };
}

function whole(list: Runs<Threaded>, ends: number): Threading {
  const shafts: Hangs[] = [];
  const sharing: boolean[] = [];
  for (const heddle of laid(list, THREADING, isOpen(list, THREADING) ? ends : undefined).runs)
    for (let end = 0; end < heddle.ends; end += 1) {
      shafts.push(heddle.shaft);
      sharing.push(end > 0);
    }
  return {
    at: (position) => shafts[position] ?? "not known",
    sharesBefore: (position) => sharing[position] ?? false,
    isBare: false,
    repeat: 0,
  };
}

function threadingOf(list: Runs<Threaded>, places: number): Threading {
  const repeat = bareRepeat(list);
  return repeat === null ? whole(list, places) : bare(repeat);
}

/**
 * The shaft of every new end as the loom is threaded, from end 1.
 *
 * @param faults ends that hang on another shaft and stay there
 * @param cloth the threading of the cloth, written whole: it says what added places are beside a threading written whole
 */
export function shaftsOf(
  list: Runs<Threaded>,
  table: Table,
  faults: readonly WarpFault[],
  cloth: Runs<Threaded> | null = null,
): Shafts {
  const threading = threadingOf(list, table.oldPlaces === 0 ? table.newEnds : table.oldPlaces);
  const ofCloth = cloth === null || bareRepeat(cloth) !== null ? null : threadingOf(cloth, table.newEnds);
  const elsewhere = new Map(
    faults.flatMap((fault) =>
      fault.is === "on another shaft" && fault.mend !== true ? [[fault.end, fault.shaft] as const] : [],
    ),
  );
  const shafts: Hangs[] = [];
  const sharing: number[] = [];
  const { isBare, repeat } = threading;
  const placeInRepeat: number[] = [];
  let [jumped, position, last] = [0, -addedBefore(table.stretches) - 1, "not known" as Hangs];
  // Whether the heddle of a pair already holds a new end: its first place may be left empty.
  let isTaken = false;
  eachPlace(table.stretches, (place) => {
    const { standing, newEnd, oldEnd, oldPlace } = place;
    const isMade = standing === "mended" || standing === "left out";
    if (isMade) {
      jumped += 1;
      if (isBare) position += 1;
    } else if (oldPlace !== null) position = oldPlace - 1 + (isBare ? jumped : 0);
    else if (standing === "added") position += 1;
    const isOutside = standing === "added" && !isBare;
    const byThreading = isOutside
      ? (ofCloth?.at((newEnd ?? 0) - 1) ?? "not known")
      : isMade && !isBare
        ? "not known"
        : threading.at(position);
    const found = isMade && place.shaft !== null ? place.shaft : byThreading;
    if (standing !== "second on one knot" && place.places > 0) last = elsewhere.get(oldEnd ?? 0) ?? found;
    if (oldPlace !== null && !threading.sharesBefore(position)) isTaken = false;
    if (!takesNewEnd(place) || newEnd === null) return;
    shafts.push(last);
    if (isBare) placeInRepeat.push((((position % repeat) + repeat) % repeat) + 1);
    const isSecond = standing === "second on one knot";
    const isShared = isOutside
      ? ofCloth?.sharesBefore(newEnd - 1) === true
      : oldPlace !== null && threading.sharesBefore(position) && isTaken;
    if (isSecond || isShared) sharing.push(newEnd);
    isTaken = true;
  });
  return { shafts, sharing, placeInRepeat, repeat };
}
