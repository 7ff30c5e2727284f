import type { Shafts } from "./shafts.js";
import { eachPlace } from "./stretch.js";
import type { Table } from "./table.js";
import type { SideTaken } from "./room-at-sides.js";
import { counted, firstSix, listed } from "./told.js";
import type { Told } from "./told.js";

export interface PlacesCounted {
  readonly threads: number;
  readonly broken: number;
  readonly tooMany: number;
  readonly oldPlaces: number;
}

/** A list of the old warp written whole against the threads that were counted. */
export function againstCount(
  list: "threading" | "old stripes" | "sley",
  comesTo: number,
  { threads, broken, tooMany, oldPlaces }: PlacesCounted,
): readonly Told[] {
  if (comesTo === oldPlaces) return [];
  const verb = list === "old stripes" ? "come" : "comes";
  const sum = `${counted(threads, "thread")} + ${String(broken)} broken − ${String(tooMany)} too many`;
  const says = `The ${list} ${verb} to ${counted(comesTo, "place")}, the count to ${String(oldPlaces)} (${sum}). Count again; the joining list waits.`;
  return [{ standing: "must", about: list, says, values: { comesTo, oldPlaces, threads, broken, tooMany } }];
}

/** A sley written whole against the ends it has to hold. */
export function againstSley(holds: number, wanted: number, notFull: readonly number[]): readonly Told[] {
  const apart: Told = {
    standing: "must",
    about: "sley",
    says: `The sley holds ${counted(holds, "end")}, there are ${String(wanted)} places.`,
    values: { holds, wanted },
  };
  const open: Told = {
    standing: "check",
    about: "sley",
    says: `Written by its ends, ${notFull.length === 1 ? "dent" : "dents"} ${firstSix(notFull)} ${notFull.length === 1 ? "is" : "are"} not full.`,
    values: { dents: notFull },
  };
  return [...(holds === wanted ? [] : [apart]), ...(notFull.length === 0 ? [] : [open])];
}

/** The threading meant for the cloth against that of the loom, place by place; the loom's stays. */
export function againstThreading(loom: Shafts, cloth: Shafts): readonly Told[] {
  const places = loom.shafts.flatMap((shaft, at) => {
    const wanted = cloth.shafts[at] ?? "not known";
    return shaft === wanted || shaft === "not known" || wanted === "not known" ? [] : [at + 1];
  });
  if (places.length === 0) return [];
  const on = (shaft: Shafts["shafts"][number] | undefined): string =>
    typeof shaft === "number" ? `on shaft ${String(shaft)}` : "floating";
  const named = places.map(
    (place) => `${String(place)} (${on(cloth.shafts[place - 1])}, not ${String(loom.shafts[place - 1])})`,
  );
  const says = `The threading of the cloth differs from the loom's at ${counted(places.length, "place")}: ${firstSix(named)}. The loom's stays; another is drawing in afresh.`;
  return [{ standing: "must", about: "threading", says, values: { places } }];
}

/** Shafts found for broken places that the threading puts on another: a count is off before them. */
export function againstFoundShafts(table: Table, threading: Shafts): readonly Told[] {
  const told: Told[] = [];
  eachPlace(table.stretches, ({ standing, newEnd, shaft }) => {
    const by = newEnd === null ? undefined : threading.shafts[newEnd - 1];
    if (standing !== "broken" || newEnd === null || shaft === null || by === "not known" || by === shaft) return;
    const says = `Place ${String(newEnd)} is broken on shaft ${String(shaft)}, but the threading puts it ${by === "floating" ? "in no heddle" : `on shaft ${String(by)}`}: a count is off before it.`;
    told.push({ standing: "must", about: "broken", says, values: { place: newEnd, found: shaft, threading: by ?? 0 } });
  });
  return told;
}

/** Heddles and dents that are short at a side. */
export function againstRoom(taken: readonly SideTaken[]): readonly Told[] {
  return taken.flatMap(({ side, dentsLeft, heddles, isShort }): readonly Told[] => {
    if (!isShort) return [];
    const short = heddles.flatMap(({ shaft, left }) => (left !== null && left < 0 ? [{ shaft, short: -left }] : []));
    const words = short.map((one) => `${String(one.short)} on shaft ${String(one.shaft)}`);
    const name = side === "before end 1" ? "Before end 1" : "After the last";
    const ofHeddles = words.length === 0 ? [] : [`heddles short: ${listed(words)}`];
    const ofDents = dentsLeft !== null && dentsLeft < 0 ? [`dents short: ${String(-dentsLeft)}`] : [];
    const says = `${name}, ${[...ofHeddles, ...ofDents].join("; ")}.`;
    const values = { side, shafts: short.map((one) => one.shaft), short: short.map((one) => one.short) };
    return [{ standing: "must", about: "room", says, values: { ...values, dents: Math.max(0, -(dentsLeft ?? 0)) } }];
  });
}
