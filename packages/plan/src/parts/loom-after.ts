import type { JobLoom, Room, Sley, Sleyed, SpareHeddles, Threaded } from "../job/loom.js";
import type { WarpFault } from "../job/old-warp.js";
import type { Runs } from "../job/runs.js";
import type { Dents } from "./dents.js";
import { bareRepeat } from "./laid-heddles.js";
import type { SideTaken } from "./room-at-sides.js";
import type { Shafts } from "./shafts.js";
import { eachPlace } from "./stretch.js";
import type { Standing } from "./stretch.js";
import type { Table } from "./table.js";

/** What is still wrong once the new warp is tied; its ends are numbered from its own end 1. */
export function faultsAfter(
  { stretches, newEnds }: Table,
  dents: Dents | null,
  faults: readonly WarpFault[],
): readonly WarpFault[] {
  const left: WarpFault[] = [];
  let after = 0;
  eachPlace(stretches, ({ standing, newEnd, oldEnd, shaft }) => {
    const isWithin = after > 0 && after < newEnds;
    const hung = shaft === null ? {} : { shaft };
    if (isWithin && standing === "left empty") left.push({ after, is: "broken", ...hung, mend: false });
    if (isWithin && standing === "left out") left.push({ after, is: "left out", ...hung });
    if (isWithin && standing === "empty heddle" && shaft !== null) left.push({ after, is: "empty heddle", shaft });
    if (newEnd === null) return;
    after = newEnd;
    if (standing !== "joined") return;
    for (const fault of faults) {
      if (!("end" in fault) || fault.end !== oldEnd || ("mend" in fault && fault.mend)) continue;
      if (fault.is === "on another shaft") left.push({ end: newEnd, is: fault.is, shaft: fault.shaft });
      const dent = dents?.dents[newEnd - 1] ?? null;
      if (fault.is === "in another dent" && dent !== null) left.push({ end: newEnd, is: fault.is, dent });
    }
  });
  return left;
}

const has = ({ stretches }: Table, ...these: readonly Standing[]): boolean =>
  stretches.some(({ standing }) => these.includes(standing));

/** Heddle by heddle: a doubled end in one. */
function heddleByHeddle({ shafts, sharing }: Shafts): readonly Threaded[] | null {
  const made: Threaded[] = [];
  for (const [at, shaft] of shafts.entries()) {
    if (shaft === "not known") return null;
    const last = made.at(-1);
    if (!sharing.includes(at + 1) || shaft === "floating" || last === undefined || last === "floating")
      made.push(shaft);
    else made[made.length - 1] = { shaft, ends: (typeof last === "number" ? 1 : last.ends) + 1 };
  }
  return made;
}

/** The threading from the new end 1: a repeat is begun where it begins now; null where it is not known. */
export function threadingAfter(list: Runs<Threaded>, table: Table, shafts: Shafts): Runs<Threaded> | null {
  const repeat = bareRepeat(list);
  if (repeat !== null) {
    const first = (shafts.placeInRepeat[0] ?? 1) - 1;
    return [...repeat.slice(first), ...repeat.slice(0, first)];
  }
  const isAsWritten = !has(table, "added", "dropped", "mended", "second on one knot", "cut back");
  return isAsWritten ? list : heddleByHeddle(shafts);
}

/** Dents of so many ends each, those alike together. */
function dentByDent({ dents }: Dents): Runs<Sleyed> | null {
  const made: { dents: number; at: number; dent: number }[] = [];
  for (const dent of dents) {
    const last = made.at(-1);
    if (dent === null || (last !== undefined && dent < last.dent)) return null;
    if (last?.dent === dent) last.at += 1;
    else made.push({ dents: 1, at: 1, dent });
  }
  const runs: Sleyed[] = [];
  for (const [index, { at, dent }] of made.entries()) {
    const between = dent - (made[index - 1]?.dent ?? dent - 1) - 1;
    const last = runs.at(-1);
    if (between > 0) runs.push({ empty: between });
    if (between === 0 && typeof last === "object" && "dents" in last && last.at === at)
      runs[runs.length - 1] = { dents: last.dents + 1, at };
    else runs.push({ dents: 1, at });
  }
  return runs;
}

/** The sley from the new end 1; null where it is not known. */
export function sleyAfter(sley: Sley, table: Table, dents: Dents): Sley | null {
  const { places } = sley;
  if (places === undefined) return sley;
  const order = bareRepeat(places);
  const isMoved = has(table, "added", "dropped");
  const isAsWritten = order === null ? !has(table, "mended", "second on one knot", "cut back") : !isMoved;
  if (isAsWritten) return sley;
  const [each, ...others] = order ?? [];
  const firstDent = dents.dents.filter((dent) => dent === 1).length;
  if (each !== undefined && others.length === 0 && firstDent === each) return sley;
  const made = dentByDent(dents);
  return made === null ? null : { places: made };
}

function heddlesAfter(taken: SideTaken["heddles"], spare: SpareHeddles): SpareHeddles | null {
  if (taken.every((one) => one.taken === 0)) return spare;
  const left = taken.map((one) => one.left ?? -1);
  return left.every((one) => one >= 0) ? left : null;
}

function sideAfter(taken: SideTaken | undefined, room: Room | undefined, dropped: boolean): Room | null {
  if (room === undefined || taken === undefined || dropped) return null;
  const dents = room.dents === undefined ? null : taken.ends === 0 ? room.dents : taken.dentsLeft;
  const heddles = room.heddles === undefined ? null : heddlesAfter(taken.heddles, room.heddles);
  const made: Room = {
    ...(dents === null || dents < 0 ? {} : { dents }),
    ...(heddles === null ? {} : { heddles }),
  };
  return Object.keys(made).length === 0 ? null : made;
}

/** What is still empty at the sides, less what was added there; a side where ends were dropped is counted again. */
export function roomAfter(
  room: NonNullable<JobLoom["room"]>,
  taken: readonly SideTaken[],
  sides: { readonly before: number; readonly after: number },
): NonNullable<JobLoom["room"]> | null {
  const before = sideAfter(taken[0], room.before, sides.before < 0);
  const after = sideAfter(taken[1], room.after, sides.after < 0);
  if (before === null && after === null) return null;
  return { ...(before === null ? {} : { before }), ...(after === null ? {} : { after }) };
}
