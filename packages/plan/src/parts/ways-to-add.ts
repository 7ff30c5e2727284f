import type { JobSides } from "../job/job.js";
import type { Room, Sleyed, Threaded } from "../job/loom.js";
import type { Runs } from "../job/runs.js";
import { dentsByPlace } from "./dents.js";
import type { OldWarpFound } from "./old-warp-in-order.js";
import { roomAtSides } from "./room-at-sides.js";
import type { SideTaken } from "./room-at-sides.js";
import { shaftsOf } from "./shafts.js";
import { atSides } from "./sides.js";

import { tableTied } from "./table.js";
import type { AtSides } from "./table.js";

type Where = NonNullable<JobSides["where"]>;

/** One of the ways in which ends may be added or dropped, with what is short at each side. */
export interface WayToAdd {
  readonly where: Where;
  readonly sides: AtSides;
  readonly taken: readonly SideTaken[];
  readonly fits: boolean;
}

export interface EndsToAdd {
  readonly oldWarp: OldWarpFound;
  /** More than there are places; less than none, fewer. */
  readonly more: number;
  readonly step: number;
  readonly threading: Runs<Threaded>;
  /** By place; null where it is by yarn or not known. */
  readonly sley: Runs<Sleyed> | null;
  readonly room: { readonly before?: Room; readonly after?: Room };
}

/** The three ways side by side: both sides, before end 1, after the last. */
export function waysToAdd({ oldWarp, more, step, threading, sley, room }: EndsToAdd): readonly WayToAdd[] {
  const ways: readonly Where[] = ["both", "before end 1", "after the last"];
  return ways.flatMap((where) => {
    const sides = atSides({ sides: { where }, more, step });
    if (sides === null) return [];
    const table = tableTied(oldWarp, sides);
    const shafts = shaftsOf(threading, table, oldWarp.faults);
    const dents = sley === null ? null : dentsByPlace(sley, table, oldWarp.faults);
    const taken = roomAtSides({ table, shafts, dents }, room);
    return [{ where, sides, taken, fits: taken.every(({ isShort }) => !isShort) }];
  });
}
