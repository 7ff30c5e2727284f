export { faultText } from "./old/job/fault.js";
export type { JobFault } from "./old/job/fault.js";
export { readJob } from "./old/job/read-job.js";
export type { JobReading } from "./old/job/read-job.js";
export type {
  Job,
  JobCosts,
  JobFibre,
  JobFirstInches,
  JobFound,
  JobPicks,
  JobWarpYarn,
  JobYarn,
  StripesItem,
} from "./old/job/job.js";
export type { JobColoursSeen, JobExtraEnds } from "./old/job/beside-the-warp.js";
export type { ExtraEnds } from "./old/plan/extra-ends.js";
export type { FibreContent } from "./old/plan/content.js";
export type { CostPlan } from "./old/plan/costs.js";
export type { FirstInches } from "./old/plan/first-inches.js";
export type { FitFinding, WarpFit } from "./old/plan/fit.js";
export type { FoundLoss, FoundPlan } from "./old/plan/found.js";
export type { Neighbours } from "./old/plan/neighbours.js";
export type { OldGroup, TyingGroup } from "./old/plan/groups.js";
export type { JoiningRow } from "./old/plan/joining.js";
export type { Joinable, YarnKnots } from "./old/plan/knots.js";
export type { PieceTape, TapeMark } from "./old/plan/piece-tape.js";
export type { ShedProof } from "./old/plan/shed-proof.js";
export { planWarp } from "./old/plan/plan-warp.js";
export type { WarpPlan } from "./old/plan/warp-plan.js";
export type { KnotPosition } from "./old/plan/position.js";
export type { PlanStep } from "./old/plan/step.js";
export type { YarnPlan } from "./old/plan/yarns.js";
export type { WoundChain } from "./old/plan/winding.js";
export { planDifferences, planDifferencesText } from "./old/text/plan-differences.js";
export type { PlanDifference } from "./old/text/plan-differences.js";
export { planText } from "./old/text/plan-text.js";
export { planJson } from "./old/text/plan-json.js";
export { reconcile } from "./reconcile/reconcile.js";
export type { Reconciliation } from "./reconcile/reconcile.js";
export type { CheckedSum } from "./reconcile/checked-sums.js";
export type { FigureName, ProjectFigures } from "./reconcile/figures.js";
export type { WayOfReckoning } from "./reconcile/relations.js";
export type { SingleChange } from "./reconcile/single-changes.js";
export type { PrintedFigure } from "./reconcile/stated-figure.js";
export { planHtml } from "./old/html/plan-html.js";
export { jobJsonSchema } from "./old/job/job-json-schema.js";
export type { JsonSchema } from "./old/job/job-json-schema.js";
