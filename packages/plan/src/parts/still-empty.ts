import type { JobLoom, Room } from "../job/loom.js";
import { counted, listed } from "./told.js";
import type { Told } from "./told.js";

function heddlesText(heddles: NonNullable<Room["heddles"]>): string {
  if (typeof heddles === "number") return `${counted(heddles, "heddle")} on each shaft`;
  return `${listed(heddles.map((number, at) => `${String(number)} on shaft ${String(at + 1)}`))} of the heddles`;
}

function sideText(where: string, room: Room | undefined): readonly string[] {
  const parts = [
    ...(room?.dents === undefined ? [] : [counted(room.dents, "dent")]),
    ...(room?.heddles === undefined ? [] : [heddlesText(room.heddles)]),
  ];
  return parts.length === 0 ? [] : [`${where} ${listed(parts)}`];
}

/** The room at the two sides of which nothing is taken. */
export function stillEmpty({ before, after }: NonNullable<JobLoom["room"]>): readonly Told[] {
  const sides = [...sideText("before end 1", before), ...sideText("after the last", after)];
  if (sides.length === 0) return [];
  return [{ standing: "free", about: "room", says: `Left empty: ${sides.join("; ")}.`, values: { sides } }];
}
