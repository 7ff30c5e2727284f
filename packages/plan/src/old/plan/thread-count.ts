import { cottonCount, denier, linenCount, metricCount, tex, worstedCount, yarnCount } from "@thrum/maths";
import type { DirectCount, IndirectCount, Yarn } from "@thrum/maths";
import type { JobYarn } from "../job/job.js";

const SYSTEMS = {
  tex,
  denier,
  cotton: cottonCount,
  worsted: worstedCount,
  linen: linenCount,
  metric: metricCount,
} as const;

/** The count of the finished thread of a yarn in the job. */
export function threadCountOf({ count, system, plies, counted }: JobYarn): DirectCount | IndirectCount {
  const yarn: Yarn = { count: SYSTEMS[system](count), plies, counted };
  return yarnCount(yarn);
}
