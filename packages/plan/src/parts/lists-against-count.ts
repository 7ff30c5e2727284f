import type { Threaded } from "../job/loom.js";
import type { Runs } from "../job/runs.js";
import type { Stripe } from "../job/stripes.js";
import type { Dents } from "./dents.js";
import { againstCount, againstSley } from "./disagreements.js";
import { THREADING, isWhole } from "./laid-heddles.js";
import { isOpen, laid } from "./laid.js";
import { STRIPES } from "./laid-stripes.js";
import type { Told } from "./told.js";

export interface ListsOfOldWarp {
  readonly standing: "tied" | "afresh";
  readonly threads: number | null;
  readonly broken: number;
  readonly tooMany: number;
  readonly oldPlaces: number | null;
  readonly threading: Runs<Threaded> | null;
  readonly oldStripes: Runs<Stripe> | null;
  readonly dents: Dents | null;
}

/** Threading, old stripes and sley written whole, each against the places counted; an open place fits what there is. */
export function listsAgainstCount(given: ListsOfOldWarp): readonly Told[] {
  const { standing, threads, broken, tooMany, oldPlaces, threading, oldStripes, dents } = given;
  const ofSley = dents === null ? [] : againstSley(dents.holds, dents.wanted, dents.notFull);
  if (standing === "afresh" || threads === null || oldPlaces === null) return ofSley;
  const counted = { threads, broken, tooMany, oldPlaces };
  const ofThreading =
    isWhole(threading) && !isOpen(threading, THREADING)
      ? againstCount("threading", laid(threading, THREADING).size, counted)
      : [];
  const ofStripes =
    oldStripes !== null && !isOpen(oldStripes, STRIPES)
      ? againstCount("old stripes", laid(oldStripes, STRIPES).size, counted)
      : [];
  return [...ofThreading, ...ofStripes, ...ofSley];
}
