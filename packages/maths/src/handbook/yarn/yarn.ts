import { oneOf, positiveEither, readInputs, whole } from "../../engine/formula/index.js";
import { DirectCount, IndirectCount } from "../../units/index.js";
import { resultantCount } from "./resultant-count.js";
import { resultantCountDirect } from "./resultant-count-direct.js";

/** A yarn as it is sold: its number, its plies, and what the number counts. */
export interface Yarn {
  readonly count: DirectCount | IndirectCount;
  readonly plies: number;
  /** Cotton, worsted and linen numbers count the single thread before folding; spun silk numbers the finished thread. */
  readonly counted: "single" | "finished thread";
}

/**
 * Count of the finished thread, in the system the yarn is numbered in; no twist contraction.
 *
 * @param yarn its count, its plies and what the count counts
 * @throws QuantityError for a field that is missing, unknown or of another kind, one error for all
 * @example yarnCount({ count: cottonCount(8), plies: 2, counted: "single" }).in(cottonCount) // 4
 */
export function yarnCount(yarn: Yarn): DirectCount | IndirectCount {
  const inputs = {
    count: positiveEither(IndirectCount, DirectCount, "a yarn count", "as the label prints it"),
    plies: whole("plies", "folded together", { atLeast: 1 }),
    counted: oneOf(["single", "finished thread"], "what the number counts"),
  };
  readInputs("yarnCount", inputs, yarn);
  const { count, plies, counted } = yarn;
  if (counted === "finished thread") return count;
  return count.dimension === "mass per length"
    ? resultantCountDirect({ count, plies })
    : resultantCount({ count, plies });
}
