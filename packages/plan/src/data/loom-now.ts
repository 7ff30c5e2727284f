import type { Remark } from "../job/job-text-with.js";
import type { JobLoom } from "../job/loom.js";
import { roomAfter, sleyAfter, threadingAfter } from "../parts/loom-after.js";
import { roomAtSides } from "../parts/room-at-sides.js";
import type { PlanData } from "./plan-data.js";

/** The wood once the new warp is tied, and what of it must be looked at again. */
export function loomNow(plan: PlanData): { readonly loom: JobLoom | undefined; readonly remarks: readonly Remark[] } {
  const { loom } = plan.job;
  if (loom === undefined) return { loom, remarks: [] };
  const { table, shafts, dentOf, sides } = plan.figures.loom;
  const { threading, room, sley, ...same } = loom;
  const remarks: Remark[] = [];
  /** What is known of it, else a remark that it must be written again. */
  const orAgain = <T>(what: string, known: T | null): T | null => {
    const says = `was changed at the sides: write ${what} as it stands now`;
    if (known === null) remarks.push({ path: ["loom"], says });
    return known;
  };
  const isKnown = table.value !== null && sides.value !== null;
  const ofThreading = isKnown && shafts.value !== null && threading !== undefined;
  const threadingNow = ofThreading ? threadingAfter(threading, table.value, shafts.value) : null;
  const ofSley = isKnown && dentOf.value !== null && sley !== undefined;
  const sleyNow = ofSley ? sleyAfter(sley, table.value, dentOf.value) : null;
  const isSame = sides.value?.before === 0 && sides.value.after === 0;
  const columns =
    isKnown && shafts.value !== null ? { table: table.value, shafts: shafts.value, dents: dentOf.value } : null;
  const roomLeft =
    columns !== null && sides.value !== null && room !== undefined
      ? roomAfter(room, roomAtSides(columns, room), sides.value)
      : null;
  const roomNow = isSame ? (room ?? null) : roomLeft;
  const now: { -readonly [K in keyof JobLoom]: JobLoom[K] } = { ...same };
  const sleyHere = sley === undefined ? null : orAgain("sley", sleyNow);
  const threadingHere = threading === undefined ? null : orAgain("threading", threadingNow);
  const roomHere = room === undefined ? null : orAgain("room", roomNow);
  if (sleyHere !== null) now.sley = sleyHere;
  if (threadingHere !== null) now.threading = threadingHere;
  if (roomHere !== null) now.room = roomHere;
  return { loom: Object.keys(now).length === 0 ? undefined : now, remarks };
}
