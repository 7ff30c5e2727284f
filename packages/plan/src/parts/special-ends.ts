import type { WarpFault } from "../job/old-warp.js";
import type { Standing } from "./stretch.js";
import type { Table } from "./table.js";

/** What is not plainly one new end to one old one. */
export interface SpecialEnd {
  readonly is: Standing | "on another shaft" | "in another dent";
  /** The new end it is, or at which it is met. */
  readonly newEnd: number;
  /** New ends of it that follow each other; none where it takes none. */
  readonly ends: number;
  readonly oldEnd: number | null;
  /** Old ends that are cut back. */
  readonly cutBack: number;
  readonly shaft: number | null;
  readonly dent: number | null;
}

/** Met with the end before: a thread in that end's heddle, or one of a pair. */
const WITH_END_BEFORE: readonly Standing[] = ["one too many", "cut back"];
const PLAIN: readonly Standing[] = ["joined", "threaded"];

/** All of it, in the order of the new ends. */
export function specialEnds({ stretches, newEnds }: Table, faults: readonly WarpFault[]): readonly SpecialEnd[] {
  const special: SpecialEnd[] = [];
  let before = 0;
  for (const { standing, places, newEnd, oldEnd, shaft } of stretches) {
    const isCut = WITH_END_BEFORE.includes(standing) || standing === "dropped";
    if (!PLAIN.includes(standing)) {
      const met = WITH_END_BEFORE.includes(standing) ? Math.max(1, before) : Math.min(before + 1, newEnds);
      const ends = newEnd === null ? 0 : places;
      const cutBack = isCut && oldEnd !== null ? Math.max(1, places) : 0;
      special.push({ is: standing, newEnd: newEnd ?? met, ends, oldEnd, cutBack, shaft, dent: null });
    }
    if (standing === "joined" && newEnd !== null && oldEnd !== null)
      for (const fault of faults) {
        if (fault.is !== "on another shaft" && fault.is !== "in another dent") continue;
        if (fault.mend === true || fault.end < oldEnd || fault.end >= oldEnd + places) continue;
        const found =
          fault.is === "on another shaft" ? { shaft: fault.shaft, dent: null } : { shaft: null, dent: fault.dent };
        const at = { newEnd: newEnd + fault.end - oldEnd, ends: 1, oldEnd: fault.end, cutBack: 0 };
        special.push({ is: fault.is, ...at, ...found });
      }
    before += newEnd === null ? 0 : places;
  }
  return [...special].sort((one, other) => one.newEnd - other.newEnd);
}
