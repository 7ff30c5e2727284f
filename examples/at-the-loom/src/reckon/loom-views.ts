import { jobTextWith, faultText, planWarp, progressText, readJob, readProgress, unitsOf } from "@thrum/plan";
import type { PlanData, PlannedGroup, Progress } from "@thrum/plan";
import type { Loom } from "../work/loom.js";
import { loomFigures } from "./loom-figures.js";
import { bandsOf, yarnsOf } from "./looks.js";
import { differences, next } from "./next.js";
import { foundIn, foundPicks, jobWith, reading, valueIn, withFault, withFound, withValue } from "./reading.js";
import { sentences } from "./steps.js";
import { marksOf } from "./marks.js";

function planIn(text: string): PlanData {
  const read = readJob(text);
  if (!read.ok) throw new RangeError(read.faults.map(faultText).join("\n"));
  return planWarp(read.value);
}

/** The job with the stripes of the first tick: groups alike that follow each other are one stripe again. */
function inOldOrder(text: string, groups: readonly PlannedGroup[]): string {
  const value = groups.map(
    ({ ends, yarns, order }) => `${String(ends)} ${yarns.join(order === undefined ? " + " : " / ")}`,
  );
  return jobTextWith(text, [{ path: ["stripes"], value }]);
}

/** Everything of a plan that the screens at the loom show. */
function loom(text: string, progress: Pick<Progress, "wovenTo" | "groups"> = {}, isOldKept = false): Loom {
  const plan = planIn(isOldKept ? inOldOrder(text, progress.groups ?? []) : text);
  const yarns = yarnsOf(plan);
  return {
    ...loomFigures(plan, yarns),
    ...sentences(plan),
    yarns,
    bands: bandsOf(plan),
    marks: marksOf(plan, unitsOf(plan.job), progress),
  };
}

/** The progress file of law 4l, and what one holds; null where it is none. */
const progressFile = (progress: Progress): string => progressText(progress);
function progressIn(text: string): Progress | null {
  const read = readProgress(text);
  return read.ok ? read.value : null;
}

/** What the screens at the loom ask of a plan: each takes plain data and gives plain data. */
export const loomViews = {
  loom,
  progressFile,
  progressIn,
  reading,
  jobWith,
  foundIn,
  foundPicks,
  withFault,
  valueIn,
  withValue,
  withFound,
  differences,
  next,
};
