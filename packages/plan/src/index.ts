export {
  checkedJob,
  faultsText,
  faultText,
  isMirrored,
  isRepeated,
  jobSchema,
  jobText,
  jobTextWith,
  jobWords,
  newJob,
  readJob,
  readStripes,
  stripesText,
  writtenText,
  writtenValue,
} from "./job/index.js";
export type * from "./job/index.js";
export {
  beyondTheLast,
  isTicked,
  knotsTied,
  miscounts,
  progressText,
  readProgress,
  stillHolds,
  tickedOff,
  untick,
} from "./progress/index.js";
export type * from "./progress/index.js";
export { planWarp } from "./data/plan-warp.js";
export type { PlanData, PlanFigures } from "./data/plan-data.js";
export type { FigureData, PartData } from "./core/read-out.js";
export type { Origin } from "./core/origin.js";
export type { Path } from "./core/source.js";
export { canBeWoven } from "./data/can-be-woven.js";
export { planFrom } from "./data/plan-from.js";
export { planJson, readPlan } from "./data/plan-json.js";
export { checkFigure } from "./data/check-figure.js";
export type { CheckedFigure } from "./data/check-figure.js";
export { planSchema } from "./data/plan-schema.js";
export { planDifferencesHtml, planDifferencesText } from "./views/differences.js";
export { planDifferences } from "./data/plan-differences.js";
export type { PlanDifference } from "./data/plan-differences.js";
export { nextJob } from "./data/next-job.js";
export type { NextJob } from "./data/next-job.js";
export { working } from "./data/working.js";
export { waitsFor } from "./data/waits-for.js";
export { planText } from "./views/text.js";
export { amountText } from "./views/amount-text.js";
export type { AmountTextOptions } from "./views/amount-text.js";
export { unitsOf } from "./views/units.js";
export type { Units } from "./views/units.js";
export { yarnSigns } from "./views/yarn-signs.js";
export type { YarnSign } from "./views/yarn-signs.js";
export { planHtml } from "./views/html.js";
export { planPages } from "./views/plan-pages.js";
export type { Block, Inline, Line, Section } from "./views/block.js";
export type { PrintOptions } from "./views/section.js";
export { readFigures } from "./reconcile/figures-text.js";
export type { FiguresReading } from "./reconcile/figures-text.js";
export { reconcile } from "./reconcile/reconcile.js";
export type { Reconciliation } from "./reconcile/reconcile.js";
export type { CheckedSum } from "./reconcile/checked-sums.js";
export type { FigureName, ProjectFigures } from "./reconcile/figures.js";
export type { WayOfReckoning } from "./reconcile/relations.js";
export type { SingleChange } from "./reconcile/single-changes.js";
export type { PrintedFigure } from "./reconcile/stated-figure.js";
export type { Told } from "./parts/told.js";
export type { SlipAbove } from "./data/slips-above.js";
export { planSums } from "./data/sums.js";
export type { PlanSum } from "./data/sums.js";
export { amountAt, membersAt } from "./data/at-path.js";
export { pathText } from "./job/fault.js";
