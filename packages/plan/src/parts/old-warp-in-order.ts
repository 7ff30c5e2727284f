import type { WarpFault } from "../job/old-warp.js";
import { placeOf } from "./stretch.js";
import type { Place } from "./stretch.js";

export interface OldWarpFound {
  /** Threads that are there. */
  readonly threads: number;
  readonly faults: readonly WarpFault[];
}

/** What was found behind a thread, in the order in which it was written. */
function foundAfter(fault: WarpFault): readonly Place[] {
  const shaft = "shaft" in fault ? (fault.shaft ?? null) : null;
  switch (fault.is) {
    case "broken": {
      const standing = fault.mend === false ? "left empty" : "broken";
      return Array.from({ length: fault.ends ?? 1 }, () => placeOf(standing, { shaft, oldPlace: 0 }));
    }
    case "left out":
      return [fault.mend === true ? placeOf("mended", { shaft }) : { ...placeOf("left out", { shaft }), places: 0 }];
    case "empty heddle":
      return [{ ...placeOf("empty heddle", { shaft }), places: 0 }];
    case "one too many":
    case "on another shaft":
    case "in another dent":
      return [];
  }
}

/** The old warp from end 1: threads that are there with what is missing and what is too many between them. */
export function oldWarpInOrder({ threads, faults }: OldWarpFound): readonly Place[] {
  const tooMany = new Set(faults.flatMap((fault) => (fault.is === "one too many" ? [fault.end] : [])));
  const after = new Map<number, Place[]>();
  for (const fault of faults) {
    const found = foundAfter(fault);
    if ("after" in fault) after.set(fault.after, [...(after.get(fault.after) ?? []), ...found]);
  }
  const places: Place[] = [];
  let oldPlaces = 0;
  const stand = (place: Place): void => {
    places.push(place.oldPlace === null ? place : { ...place, oldPlace: (oldPlaces += 1) });
  };
  for (let thread = 0; thread <= threads; thread += 1) {
    if (tooMany.has(thread)) places.push({ ...placeOf("one too many", { oldEnd: thread }), places: 0 });
    else if (thread > 0) stand(placeOf("joined", { oldEnd: thread, oldPlace: 0 }));
    after.get(thread)?.forEach(stand);
  }
  return places;
}
