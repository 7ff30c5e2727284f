import { decimalText } from "../engine/numbers.js";
import { declarationOf, run } from "../engine/formula/index.js";
import type { Calculation } from "../engine/formula/index.js";
import { described } from "../engine/quantity/index.js";
import { inPlace, QuantityError } from "../engine/refusal.js";
import type { Place } from "../engine/refusal.js";
import { answerOf } from "./hand.js";
import { sceneOf } from "./reasons.js";
import { readWritten } from "./written.js";
import { WHOLE } from "./tolerances.js";

/** How many digits of an answer may be claimed, judged from how its inputs were written. */
export interface DigitsEarned {
  /** The least and the most the answer can be, in its own unit, when every input is off by half its last digit. */
  readonly from: number;
  readonly to: number;
  /** Decimals that may be written, the last of them in doubt; below zero tens or hundreds are in doubt. Null where no input is in doubt. */
  readonly decimals: number | null;
  /** The input that limits them: the one to measure more finely. Null where none is in doubt. */
  readonly limitedBy: string | null;
}

/** An input passed over without a word would leave the answer more digits than it has earned. */
function refuse(name: string, inputs: readonly string[]): never {
  const place = { function: "digitsEarned", path: [name] };
  const expected = `single numbers among ${inputs.join(", ")}`;
  throw new QuantityError({ code: "unknown-field", ...place, expected, received: described(name), remedy: "" });
}

/** A figure that is not the input rounded belongs to another question. */
function refuseFigure(where: Place, text: string, own: string): never {
  throw new QuantityError({
    code: "out-of-range",
    ...inPlace(where),
    expected: `${own} as it was written`,
    received: described(text),
    remedy: "",
  });
}

/**
 * How many digits of an answer its inputs have earned: no statistics, each input off by half its last written digit.
 *
 * @param calculation any calculation of the handbook
 * @param input what one would call it with
 * @param written the inputs that were measured, as text: "21" is good to half an inch, "21.0" to a twentieth; what is counted or
 *   left out is exact
 * @throws QuantityError "unreadable" for what is no number, "unknown-field" for what is no single number of the input,
 *   "out-of-range" for a figure that is not the input
 */
export function digitsEarned<I>(
  calculation: Calculation<I, unknown>,
  input: NoInfer<I>,
  written: { readonly [K in keyof I]?: string },
): DigitsEarned {
  const worked = run(declarationOf("digitsEarned", calculation), input);
  const { declared, inputs } = worked;
  const { hand, values, percents } = sceneOf(worked, worked.unit);
  const value = worked.value.toNumber();
  let [below, above, widest, limitedBy] = [0, 0, 0, null as string | null];
  for (const [name, text] of Object.entries(written) as [string, string][]) {
    const read = inputs.get(name);
    const own = values.get(name);
    if (read === undefined || !("value" in read) || typeof own !== "number") return refuse(name, [...inputs.keys()]);
    const where: Place = ["digitsEarned", name];
    const figure = readWritten(where, text, read.what === "quantity" ? read.unit : null);
    const off = read.value.minus(figure.value).abs();
    if (off.gt(figure.step.div(2))) return refuseFigure(where, text, decimalText(read.value));
    if (declared.inputs[name]?.what === "whole") continue;
    const half = (percents.has(name) ? 0.01 : 1) * figure.step.div(2).toNumber();
    const offs = [own - half, own + half].map((end) => answerOf(hand, new Map(values).set(name, end)) - value);
    const [low, high] = [Math.min(0, ...offs), Math.max(0, ...offs)];
    below += low;
    above += high;
    if (high - low > widest) [widest, limitedBy] = [high - low, name];
  }
  const doubt = Math.max(-below, above);
  const decimals = limitedBy === null ? null : Math.ceil(-Math.log10(2 * doubt) - WHOLE) + 0;
  return { from: value + below, to: value + above, decimals, limitedBy };
}
