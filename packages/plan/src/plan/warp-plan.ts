export type { WarpPlan } from "./plan-warp.js";
