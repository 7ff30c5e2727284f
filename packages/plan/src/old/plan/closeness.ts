import {
  dentsPerInch,
  dentsPerTenCentimetres,
  endsPerCentimetre,
  endsPerInch,
  picksPerCentimetre,
  picksPerInch,
} from "@thrum/maths";
import type { EndsPerLength, PicksPerLength, settInReed } from "@thrum/maths";
import type { Job, JobPicks } from "../job/job.js";

/** The sett the new warp was planned on. */
export function settOf({ sett }: Job["newWarp"]): EndsPerLength {
  return sett.in === "1 inch" ? endsPerInch(sett.ends) : endsPerCentimetre(sett.ends);
}

/** The sley that is kept: the old reed at the old ends per dent. */
export function oldSley({ reed, endsPerDent }: Job["oldWarp"]): Parameters<typeof settInReed>[0] {
  const dents = reed.in === "1 inch" ? dentsPerInch(reed.dents) : dentsPerTenCentimetres(reed.dents);
  return { reed: dents, endsPerDent };
}

/** The picks of the weft, at weaving tension. */
export function picksOf({ picksAtLoom }: { readonly picksAtLoom: JobPicks }): PicksPerLength {
  return picksAtLoom.in === "1 inch" ? picksPerInch(picksAtLoom.picks) : picksPerCentimetre(picksAtLoom.picks);
}
