import { oneOf, positive, readInputs } from "../../engine/formula/index.js";
import { frozen } from "../../engine/frozen.js";
import { allTogether, refuse } from "../../engine/refusal.js";
import { described, ratio } from "../../engine/quantity/index.js";
import { IndirectCount, endsPerInch, percentAdded } from "../../units/index.js";
import type { Addition, EndsPerLength } from "../../units/index.js";
import { drawn } from "../weave/drawn.js";
import type { Weave } from "../weave/drawn.js";
import { weaveQuantities } from "../weave/weave-quantities.js";
import { setts } from "./setts-by-rules.js";
import type { SettByRule, SilentRule } from "./sett-by-rule.js";

export interface ComparedSettsInput {
  /** One repeat, pick by pick. */
  readonly weave: Weave;
  /** Of the finished thread, in warp and weft. */
  readonly count: IndirectCount;
  readonly material: "cotton" | "worsted" | "woollen";
  /** Of the yarn round a ruler, touching. */
  readonly wrapsPerInch: number | "not wrapped";
}

export interface ComparedSetts {
  /** The most open first. */
  readonly setts: readonly SettByRule[];
  readonly silent: readonly SilentRule[];
  readonly lowest: EndsPerLength;
  readonly highest: EndsPerLength;
  /** How far the highest lies over the lowest. */
  readonly spread: Addition;
}

function checkWraps(wraps: unknown): void {
  const isWhole = Number.isSafeInteger(wraps);
  if ((isWhole && Number(wraps) > 0) || wraps === "not wrapped") return;
  const known = typeof wraps === "string" ? "unknown-word" : "wrong-kind";
  refuse(
    wraps === undefined || wraps === null ? "missing" : isWhole ? "out-of-range" : known,
    ["comparedSetts", "wrapsPerInch"],
    'a whole number of wraps, or "not wrapped"',
    described(wraps),
    "Wrap the yarn round a ruler, touching, and count it over an inch.",
    { kind: "whole", atLeast: 1, candidates: ["not wrapped"], example: "24" },
  );
}

/**
 * What the rules of the trade give as the closest sett of one yarn in one weave, side by side, and how far they disagree.
 * Each is a limit, not a recommendation: see `settForPurpose`.
 *
 * @throws QuantityError "unreadable" or "no-answer" for a weave, else as any calculation does
 * @source taylor-1909
 * @example
 * const input: ComparedSettsInput = { weave: twill({ floats: [2, 2] }), count: cottonCount(8), material: "cotton", wrapsPerInch: "not wrapped" };
 * comparedSetts(input).spread.in(percentAdded) // 15.9…
 */
export function comparedSetts(input: ComparedSettsInput): ComparedSetts {
  const inputs = {
    count: positive(IndirectCount, "of the finished thread"),
    material: oneOf(["cotton", "worsted", "woollen"], "what the yarn is spun from, and how"),
  };
  const { weave, wrapsPerInch, ...yarn } = Object(input) as ComparedSettsInput;
  allTogether(
    () => drawn("comparedSetts", weave),
    () => readInputs("comparedSetts", inputs, yarn),
    () => {
      checkWraps(wrapsPerInch);
    },
  );
  const { found, silent } = setts(weaveQuantities(weave), weave, { ...yarn, wrapsPerInch });
  const sorted = [...found].sort((a, b) => a.sett.in(endsPerInch) - b.sett.in(endsPerInch));
  const [lowest, highest] = [sorted[0]?.sett, sorted.at(-1)?.sett];
  if (lowest === undefined || highest === undefined) throw new RangeError("no rule speaks of the material");
  return frozen({
    setts: sorted,
    silent,
    lowest,
    highest,
    spread: percentAdded(100 * (ratio(highest, lowest) - 1)),
  });
}
