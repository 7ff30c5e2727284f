import type { JobYarn } from "../job/yarns.js";

/** The colour of each yarn on a screen, of those of which it is told. */
export function colourSeen(yarns: Readonly<Record<string, JobYarn>>): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.entries(yarns).flatMap(([name, { seen }]) => (seen === undefined ? [] : [[name, seen] as const])),
  );
}
