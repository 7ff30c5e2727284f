import type { Source } from "../../engine/formula/index.js";
import type { Quantity } from "../../engine/quantity/index.js";

/** Whether a difference forbids the join, wants a look, or is the weaver's choice. */
export type Standing = "must" | "check" | "free";

type Figure = number | Quantity<string>;

/** One thing compared in two warps. */
export interface Finding {
  readonly about: "ends" | "threading" | "sett" | "grist" | "stripe edges";
  readonly standing: Standing;
  readonly agrees: boolean;
  readonly old: Figure;
  readonly new: Figure;
  /** New less old. */
  readonly difference: Figure;
  readonly says: string;
  readonly source: Source;
}
