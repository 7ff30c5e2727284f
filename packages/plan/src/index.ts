export { faultText } from "./job/fault.js";
export type { JobFault } from "./job/fault.js";
export { readJob } from "./job/read-job.js";
export type { JobReading } from "./job/read-job.js";
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
} from "./job/job.js";
export type { JobColoursSeen, JobExtraEnds } from "./job/beside-the-warp.js";
export type { ExtraEnds } from "./plan/extra-ends.js";
export type { FibreContent } from "./plan/content.js";
export type { CostPlan } from "./plan/costs.js";
export type { FirstInches } from "./plan/first-inches.js";
export type { FitFinding, WarpFit } from "./plan/fit.js";
export type { FoundLoss, FoundPlan } from "./plan/found.js";
export type { Neighbours } from "./plan/neighbours.js";
export type { OldGroup, TyingGroup } from "./plan/groups.js";
export type { JoiningRow } from "./plan/joining.js";
export type { Joinable, YarnKnots } from "./plan/knots.js";
export type { PieceTape, TapeMark } from "./plan/piece-tape.js";
export type { ShedProof } from "./plan/shed-proof.js";
export { planWarp } from "./plan/plan-warp.js";
export type { WarpPlan } from "./plan/warp-plan.js";
export type { KnotPosition } from "./plan/position.js";
export type { PlanStep } from "./plan/step.js";
export type { YarnPlan } from "./plan/yarns.js";
export type { WoundChain } from "./plan/winding.js";
export { planDifferences, planDifferencesText } from "./text/plan-differences.js";
export type { PlanDifference } from "./text/plan-differences.js";
export { planText } from "./text/plan-text.js";
export { planJson } from "./text/plan-json.js";
export { reconcile } from "./reconcile/reconcile.js";
export type { Reconciliation } from "./reconcile/reconcile.js";
export type { CheckedSum } from "./reconcile/checked-sums.js";
export type { FigureName, ProjectFigures } from "./reconcile/figures.js";
export type { WayOfReckoning } from "./reconcile/relations.js";
export type { SingleChange } from "./reconcile/single-changes.js";
export type { PrintedFigure } from "./reconcile/stated-figure.js";
export { planHtml } from "./html/plan-html.js";
export { jobJsonSchema } from "./job/job-json-schema.js";
export type { JsonSchema } from "./job/job-json-schema.js";
