import type { Part } from "../core/source.js";
import { always, orNone } from "../core/wiring.js";
import { worked } from "../core/worked.js";
import { againstFoundShafts, againstThreading } from "../parts/disagreements.js";
import { shaftsOf } from "../parts/shafts.js";
import { tableAfresh } from "../parts/table.js";
import type { Told } from "../parts/told.js";
import { job } from "./keys.js";
import * as loom from "./loom.js";

const { part } = worked("plan");
const faults = orNone(job.oldWarp.faults, always([]));

/** The threading meant for the cloth against the loom's. */
export const threading: Part<readonly Told[]> = part(
  { cloth: job.cloth.threading, shafts: loom.shafts, ends: loom.ends },
  (given) => againstThreading(given.shafts, shaftsOf(given.cloth, tableAfresh(given.ends), [])),
);
/** A shaft found for a broken end, which the threading puts on another. */
export const broken: Part<readonly Told[]> = part(
  { table: loom.table, threading: job.loom.threading, faults },
  (given) => againstFoundShafts(given.table, shaftsOf(given.threading, given.table, given.faults)),
);
