import type { Dents } from "./dents.js";
import type { Hangs, Shafts } from "./shafts.js";
import { eachPlace } from "./stretch.js";
import type { Table } from "./table.js";

/** New ends that follow each other without an old one: each gets a partner before any knot is tied. */
export interface PartnersToMake {
  readonly is: "added" | "broken" | "mended";
  readonly firstEnd: number;
  readonly lastEnd: number;
  readonly ends: number;
  /** Of each of them in turn. */
  readonly shafts: readonly Hangs[];
  readonly dents: readonly (number | null)[];
  /** The heddle there is, one that hangs spare, or a repair heddle where none hangs. */
  readonly heddle: "its own" | "a spare one" | "a repair heddle";
}

const HEDDLES = { added: "a spare one", broken: "its own", mended: "a repair heddle" } as const;

export function partnersToMake(
  { stretches }: Table,
  shafts: Shafts | null,
  dents: Dents | null,
): readonly PartnersToMake[] {
  return stretches.flatMap(({ standing, newEnd, places }): readonly PartnersToMake[] => {
    if (newEnd === null || (standing !== "added" && standing !== "broken" && standing !== "mended")) return [];
    const ends = Array.from({ length: places }, (_, at) => newEnd + at);
    return [
      {
        is: standing,
        firstEnd: newEnd,
        lastEnd: newEnd + places - 1,
        ends: places,
        shafts: ends.map((end) => shafts?.shafts[end - 1] ?? "not known"),
        dents: ends.map((end) => dents?.dents[end - 1] ?? null),
        heddle: HEDDLES[standing],
      },
    ];
  });
}

/** The old place of every new end; null where it has none. */
export function oldPlaceOfEach({ stretches }: Table): readonly (number | null)[] {
  const places: (number | null)[] = [];
  eachPlace(stretches, ({ newEnd, oldPlace }) => {
    if (newEnd !== null) places.push(oldPlace);
  });
  return places;
}
