import type { EntryRow } from "./entry-rows.js";
import { inches, sum, wovenInOrder } from "@thrum/maths";
import type { Length } from "@thrum/maths";

/** An entry of the run as it is woven; the breaks are no entry. */
export interface WovenEntry {
  readonly name: string;
  readonly title: string;
  readonly kind: "cloth" | "at the loom";
  readonly number: number;
  /** Of one, with its hems, at weaving tension. */
  readonly woven: Length;
  readonly hem: Length;
  /** Warp left unwoven at each end of it. */
  readonly fringe: Length;
}

/** Where one piece begins and stops on a tape pinned to the cloth at its first pick. */
export interface TapeMark {
  /** The row of its entry. */
  readonly entry: string;
  readonly title: string;
  readonly kind: WovenEntry["kind"];
  /** From 1: of its entry, and of all that is woven. */
  readonly ofEntry: number;
  readonly inRun: number;
  /** Woven cloth alone, the breaks too. */
  readonly wovenFrom: Length;
  readonly wovenTo: Length;
  /** On the tape: fringes left unwoven lie between two pieces twice. */
  readonly from: Length;
  readonly to: Length;
  readonly hem: Length;
  /** Left unwoven before it, and behind it. */
  readonly fringe: Length;
}

export interface Tape {
  readonly marks: readonly TapeMark[];
  /** Pieces that no mark is made for: more than anyone pins to one tape. */
  readonly unmarked: number;
}

const MOST_MARKS = 500;

/** A mark for each piece in the order of weaving; the first fringe lies before the tape begins. */
export function tapeOf(entries: readonly WovenEntry[], breakLength: Length): Tape {
  const marks: TapeMark[] = [];
  const all = entries.reduce((so, { number }) => so + number, 0);
  const wovenLength = [...entries.map(({ woven }) => woven), breakLength];
  const done = entries.map(() => 0);
  let unwoven = inches(0);
  entries.forEach((entry, at) => {
    for (let ofEntry = 1; ofEntry <= entry.number && marks.length < MOST_MARKS; ofEntry += 1) {
      const breaks = marks.length;
      // From the numbers woven so far, each time anew: added up piece by piece a kept quotient would drift.
      const wovenFrom = wovenInOrder({ number: [...done, breaks], wovenLength });
      done[at] = ofEntry;
      const wovenTo = wovenInOrder({ number: [...done, breaks], wovenLength });
      if (breaks > 0) unwoven = sum(unwoven, entry.fringe);
      marks.push({
        entry: entry.name,
        title: entry.title,
        kind: entry.kind,
        ofEntry,
        inRun: marks.length + 1,
        wovenFrom,
        wovenTo,
        from: sum(wovenFrom, unwoven),
        to: sum(wovenTo, unwoven),
        hem: entry.hem,
        fringe: entry.fringe,
      });
      unwoven = sum(unwoven, entry.fringe);
    }
  });
  return { marks, unmarked: all - marks.length };
}

/** The entries of the run, without the breaks, which lie between them. */
export function wovenEntries(given: {
  readonly entries: readonly EntryRow[];
  readonly numbers: readonly number[];
  readonly woven: readonly Length[];
  readonly hems: readonly Length[];
  readonly fringes: readonly Length[];
}): readonly WovenEntry[] {
  return given.entries.flatMap(({ name, title, kind }, at): readonly WovenEntry[] => {
    const [number, woven, hem, fringe] = [given.numbers[at], given.woven[at], given.hems[at], given.fringes[at]];
    if (kind === "between" || number === undefined || woven === undefined || hem === undefined || fringe === undefined)
      return [];
    return [{ name, title, kind, number, woven, hem, fringe }];
  });
}
