import type { Remark } from "../job/job-text-with.js";
import type { OldWarp } from "../job/old-warp.js";
import { sameData } from "../job/same-data.js";
import { handOf } from "../parts/laid-stripes.js";
import { isOpen } from "../parts/laid.js";
import { STRIPES } from "../parts/laid-stripes.js";
import { faultsAfter } from "../parts/loom-after.js";
import { namesInRuns } from "../parts/yarn-rows.js";
import type { PlanData } from "./plan-data.js";

/** Counts of the yarns in the warp, each once; none where one of them is not known. */
function countsOf({ stripes, yarns }: PlanData["job"]): OldWarp["yarn"] {
  const counts = namesInRuns(stripes ?? []).map((name) => yarns?.[name]?.count);
  const known = counts.flatMap((count) => (count === undefined ? [] : [count]));
  if (known.length === 0 || known.length < counts.length) return undefined;
  return known.filter((count, at) => known.findIndex((one) => sameData(one, count)) === at);
}

/** This warp as the old one of the next. */
export function oldWarpNow(plan: PlanData): {
  readonly oldWarp: OldWarp | undefined;
  readonly remarks: readonly Remark[];
} {
  const { ends, stripes: laid, table, dentOf, sides } = plan.figures.loom;
  const { oldWarp: was, stripes } = plan.job;
  if (ends.value === null) return { oldWarp: undefined, remarks: [] };
  const yarn = countsOf(plan.job) ?? (stripes === undefined ? was?.yarn : undefined);
  const faults =
    table.value === null || sides.value === null ? [] : faultsAfter(table.value, dentOf.value, was?.faults ?? []);
  // Stripes written whole must come to the places, and one without an end takes no colour.
  const isWhole = faults.every(({ is }) => is !== "broken");
  const asLaid = laid.value?.runs.map((stripe) => ({ ends: stripe.ends, ...handOf(stripe) }));
  const colours = stripes !== undefined && !isOpen(stripes, STRIPES) ? stripes : asLaid;
  const remarks: Remark[] = [];
  if (was?.ends !== undefined)
    remarks.push({ path: ["oldWarp", "ends"], says: `was ${String(was.ends)}: count again` });
  if (was?.left !== undefined) remarks.push({ path: ["oldWarp"], says: "was measured: write left again" });
  const oldWarp = {
    ends: ends.value,
    ...(yarn === undefined ? {} : { yarn }),
    ...(colours === undefined || !isWhole ? {} : { stripes: colours }),
    ...(faults.length === 0 ? {} : { faults }),
  };
  return { oldWarp, remarks };
}
