import { listOf, readInputs, whole } from "../../engine/formula/index.js";
import { refuse } from "../../engine/refusal.js";
import type { Weave } from "./drawn.js";

export interface TwillInput {
  /** Picks an end passes over, then under, and so on through the repeat: [2, 2], or [5, 2, 1, 2]. */
  readonly floats: readonly number[];
}

/**
 * A regular twill, each pick moved one end on from the pick before.
 *
 * @throws QuantityError "wrong-kind" for an odd number of floats, which would not close
 * @example twill({ floats: [2, 1] }) // ["xx.", ".xx", "x.x"]
 */
export function twill(input: TwillInput): Weave {
  const float = whole("threads", "over or under, in turn", { atLeast: 1, atMost: 100 });
  readInputs("twill", { floats: listOf(float) }, input);
  const { floats } = input;
  const first = floats.map((length, at) => (at % 2 === 0 ? "x" : ".").repeat(length)).join("");
  if (floats.length % 2 !== 0 || first.length > 1000) {
    refuse(
      "wrong-kind",
      ["twill", "floats"],
      "as many floats under as over, in a repeat of no more than 1000 ends",
      `${String(floats.length)} floats, ${String(first.length)} ends`,
      "Write over, under, over, under: [2, 2] or [5, 2, 1, 2].",
    );
  }
  const ends = first.length;
  return Object.freeze(Array.from(first, (_, pick) => first.slice(ends - pick) + first.slice(0, ends - pick)));
}
