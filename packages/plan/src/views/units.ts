import type { Job } from "../job/job.js";

/** What the weaver measures with: the units of the first length that the job writes. */
export type Units = "inches" | "centimetres";

const IMPERIAL = /inch|yard|feet|foot/iu;
const METRIC = /metre/iu;

function firstIn(value: unknown): Units | null {
  if (typeof value !== "object" || value === null) return null;
  if ("unit" in value && typeof value.unit === "string")
    return IMPERIAL.test(value.unit) ? "inches" : METRIC.test(value.unit) ? "centimetres" : null;
  for (const inner of Object.values(value)) {
    const found = firstIn(inner);
    if (found !== null) return found;
  }
  return null;
}

/** The units of a job: those of the pieces and the warp, then of the cloth and the loom; centimetres where it has none. */
export function unitsOf({ pieces, warp, cloth, loom, winding, found }: Job): Units {
  return firstIn([pieces, warp, cloth, winding, found, loom]) ?? "centimetres";
}
