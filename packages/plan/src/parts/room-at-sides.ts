import type { Room } from "../job/loom.js";
import type { Dents } from "./dents.js";
import type { Hangs, Shafts } from "./shafts.js";
import { addedBefore } from "./stretch.js";
import type { Table } from "./table.js";

/** What the ends added at one side take there, and what is left of the room. */
export interface SideTaken {
  readonly side: "before end 1" | "after the last";
  readonly ends: number;
  /** None where the dents are not known. */
  readonly dents: number | null;
  /** Less than none are short; null where the room is not told. */
  readonly dentsLeft: number | null;
  /** Of each shaft taken or told, from shaft 1. */
  readonly heddles: readonly { readonly shaft: number; readonly taken: number; readonly left: number | null }[];
  readonly isShort: boolean;
}

export interface LoomColumns {
  readonly table: Table;
  readonly shafts: Shafts;
  /** None where the sley is not known. */
  readonly dents: Dents | null;
}

function takenAt(hangs: readonly Hangs[], room: Room | null): SideTaken["heddles"] {
  const onShafts = hangs.flatMap((one) => (typeof one === "number" ? [one] : []));
  const there = room?.heddles;
  const told = typeof there === "object" ? there.length : 0;
  const most = onShafts.reduce((so, shaft) => Math.max(so, shaft), told);
  return Array.from({ length: most }, (_, at) => {
    const taken = onShafts.filter((shaft) => shaft === at + 1).length;
    const free = typeof there === "object" ? (there[at] ?? 0) : there;
    return { shaft: at + 1, taken, left: free === undefined ? null : free - taken };
  });
}

/** Heddles and dents that the ends added at each side take, held against the room told there. */
export function roomAtSides(
  { table, shafts, dents }: LoomColumns,
  room: { readonly before?: Room; readonly after?: Room },
): readonly SideTaken[] {
  const before = addedBefore(table.stretches);
  const last = table.stretches.at(-1);
  const after = last?.standing === "added" && table.stretches.length > 1 ? last.places : 0;
  const hangs = (from: number, to: number): readonly Hangs[] =>
    shafts.shafts.slice(from, to).filter((_, at) => !shafts.sharing.includes(from + at + 1));
  const dentAt = (newEnd: number): number | null => dents?.dents[newEnd - 1] ?? null;
  const apart = (one: number | null, other: number | null): number | null =>
    one === null || other === null ? null : other - one;
  const side = (name: SideTaken["side"], ends: number, on: readonly Hangs[], taken: number | null, of: Room | null) => {
    const dentsLeft = taken === null || of?.dents === undefined ? null : of.dents - taken;
    const heddles = takenAt(on, of);
    const isShort = (dentsLeft ?? 0) < 0 || heddles.some(({ left }) => (left ?? 0) < 0);
    return { side: name, ends, dents: taken, dentsLeft, heddles, isShort };
  };
  const { newEnds } = table;
  const dentsBefore = before === 0 ? 0 : apart(dentAt(1), dentAt(before + 1));
  const dentsAfter = after === 0 ? 0 : apart(dentAt(newEnds - after), dentAt(newEnds));
  return [
    side("before end 1", before, hangs(0, before), dentsBefore, room.before ?? null),
    side("after the last", after, hangs(newEnds - after, newEnds), dentsAfter, room.after ?? null),
  ];
}
