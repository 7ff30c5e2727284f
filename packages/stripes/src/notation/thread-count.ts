import { check } from "../refusal/check.js";
import { oneOf, someEnds } from "../refusal/kinds.js";
import type { Pivots } from "../sequence/full-sett.js";
import type { Sequence } from "../sequence/sequence.js";
import { aLegend, type Legend, nameOf } from "./legend.js";

export interface ThreadCountInput<C> {
  readonly sett: Sequence<C>;
  readonly legend: Legend<C>;
  readonly pivots: Pivots;
}

export const aLetterLegend: ReturnType<typeof aLegend> = /* @__PURE__ */ aLegend(
  /^[A-Za-z]{1,3}$/,
  "one to three letters",
);

/**
 * A pattern sett written in letters and counts: a stroke marks a pivot counted whole, an asterisk one counted half,
 * dots a sett that repeats straight on.
 *
 * @throws StripeError for a colour without a letter
 * @example
 * const sett = sequence([{ colour: "black", ends: 4 }, { colour: "yellow", ends: 6 }]);
 * threadCount({ sett, legend: { K: "black", Y: "yellow" }, pivots: "full count" }) // "K/4 Y/6"
 */
export function threadCount<C>(input: ThreadCountInput<C>): string {
  check("threadCount", input, {
    sett: someEnds,
    legend: aLetterLegend,
    pivots: oneOf("full count", "half count", "repeating"),
  });
  const { sett, legend, pivots } = input;
  const last = sett.written.length - 1;
  const stripes = sett.written.map(({ colour, ends }, index) => {
    const letter = nameOf("threadCount", legend, colour);
    const marked = (index === 0 || index === last) && pivots !== "repeating";
    if (!marked) return letter + String(ends);
    return pivots === "full count" ? `${letter}/${ends}` : `${letter}${ends}*`;
  });
  return pivots === "repeating" ? `... ${stripes.join(" ")} ...` : stripes.join(" ");
}
