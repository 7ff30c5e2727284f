import type { WarpFault } from "../job/old-warp.js";
import { stretchOf } from "./stretch.js";
import type { Stretch } from "./stretch.js";

export interface OldWarpFound {
  /** Threads that are there. */
  readonly threads: number;
  readonly faults: readonly WarpFault[];
}

/** What was found behind a thread, in the order in which it was written. */
function foundAfter(fault: WarpFault): readonly Stretch[] {
  const shaft = "shaft" in fault ? (fault.shaft ?? null) : null;
  switch (fault.is) {
    case "broken": {
      const standing = fault.mend === false ? "left empty" : "broken";
      return Array.from({ length: fault.ends ?? 1 }, () => stretchOf(standing, 1, { shaft, oldPlace: 0 }));
    }
    case "left out":
      return [fault.mend === true ? stretchOf("mended", 1, { shaft }) : stretchOf("left out", 0, { shaft })];
    case "empty heddle":
      return [stretchOf("empty heddle", 0, { shaft })];
    case "one too many":
    case "on another shaft":
    case "in another dent":
      return [];
  }
}

/** The old warp from end 1: threads that are there with what is missing and what is too many between them. */
export function oldWarpInOrder({ threads, faults }: OldWarpFound): readonly Stretch[] {
  const tooMany = new Set(faults.flatMap((fault) => (fault.is === "one too many" ? [fault.end] : [])));
  const after = new Map<number, Stretch[]>();
  for (const fault of faults)
    if ("after" in fault) after.set(fault.after, [...(after.get(fault.after) ?? []), ...foundAfter(fault)]);
  const stretches: Stretch[] = [];
  let oldPlaces = 0;
  const stand = (stretch: Stretch): void => {
    stretches.push(stretch.oldPlace === null ? stretch : { ...stretch, oldPlace: oldPlaces + 1 });
    if (stretch.oldPlace !== null) oldPlaces += stretch.places;
  };
  // Only where something was found is a thread looked at by itself.
  const cuts = new Set([0, threads, ...after.keys(), ...tooMany, ...[...tooMany].map((end) => end - 1)]);
  let before = 0;
  for (const end of [...cuts].filter((one) => one <= threads).sort((a, b) => a - b)) {
    if (tooMany.has(end)) stretches.push(stretchOf("one too many", 0, { oldEnd: end }));
    else if (end > before) stand(stretchOf("joined", end - before, { oldEnd: before + 1, oldPlace: 0 }));
    after.get(end)?.forEach(stand);
    before = end;
  }
  return stretches;
}
