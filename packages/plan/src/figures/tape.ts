import type { Part } from "../core/source.js";
import { all } from "../core/wiring.js";
import { worked } from "../core/worked.js";
import { tapeOf } from "../parts/tape.js";
import type { Tape, WovenEntry } from "../parts/tape.js";
import * as breaks from "./breaks.js";
import * as piece from "./piece.js";
import { entries } from "./rows.js";

const { part } = worked("plan");

/** Where each piece begins and stops on a tape pinned along the cloth. */
export const marks: Part<Tape> = part(
  {
    entries,
    numbers: all(piece.number),
    woven: all(piece.woven),
    hems: all(piece.hem),
    fringes: all(piece.fringe),
    breakLength: breaks.one,
  },
  ({ entries: rows, numbers, woven, hems, fringes, breakLength }) => {
    const run = rows.flatMap(({ name, title, kind }, at): readonly WovenEntry[] => {
      const [number, one, hem, fringe] = [numbers[at], woven[at], hems[at], fringes[at]];
      if (kind === "between" || number === undefined || one === undefined || hem === undefined || fringe === undefined)
        return [];
      return [{ name, title, kind, number, woven: one, hem, fringe }];
    });
    return tapeOf(run, breakLength);
  },
);
