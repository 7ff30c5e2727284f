import { Decimal } from "../numbers.js";
import { countsInUnit, declarationOf, intoFrame, outOfFrame, run } from "../formula/index.js";
import type { Calculation } from "../formula/index.js";
import { described } from "../quantity/index.js";
import { QuantityError } from "../refusal.js";
import { readClaim } from "./claim.js";
import { roughAnswer, roughly } from "./roughly.js";

/** How many digits of an answer may be claimed, judged from how its inputs were written. */
export interface DigitsEarned {
  /** The least and the most the answer can be, in its own unit, when every input is off by half its last digit. */
  readonly from: number;
  readonly to: number;
  /** Decimals that may be written; below zero tens or hundreds are in doubt. Null where no input is in doubt. */
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

/**
 * How many digits of an answer its inputs have earned: no statistics, each input off by half its last written digit.
 *
 * @param calculation any calculation of the handbook
 * @param input what one would call it with
 * @param written the inputs that were measured, as text: "21" is good to half an inch, "21.0" to a twentieth; what is left out is
 *   taken for counted and exact
 * @throws QuantityError "unreadable" for what is no number, "unknown-field" for what is no single number of the input
 */
export function digitsEarned<I>(
  calculation: Calculation<I, unknown>,
  input: NoInfer<I>,
  written: { readonly [K in keyof I]?: string },
): DigitsEarned {
  const { declared, values, inputs, unit, frame, value } = run(declarationOf("digitsEarned", calculation), input);
  const known = roughly(values);
  const perFrame = unit === null || countsInUnit(declared) ? 1 : outOfFrame(frame, new Decimal(1), unit).toNumber();
  let [below, above, widest, limitedBy] = [0, 0, 0, null as string | null];
  for (const [name, text] of Object.entries(written) as [string, string][]) {
    const [, decimals] = readClaim(["digitsEarned", name], text, undefined);
    const read = inputs.get(name);
    const own = known.get(name);
    if (read === undefined || !("value" in read) || typeof own !== "number") return refuse(name, [...inputs.keys()]);
    const half = new Decimal(10).pow(-decimals).div(2);
    const off = (read.what === "quantity" ? intoFrame(frame, half, read.unit) : half).toNumber();
    const ends = [own - off, own + off].map((end) => roughAnswer(declared.lines, new Map(known).set(name, end)));
    const offs = ends.map((end) => end * perFrame - value.toNumber());
    const [low, high] = [Math.min(0, ...offs), Math.max(0, ...offs)];
    below += low;
    above += high;
    if (high - low > widest) [widest, limitedBy] = [high - low, name];
  }
  const doubt = Math.max(-below, above);
  const decimals = limitedBy === null ? null : Math.floor(-Math.log10(2 * doubt) + 1e-9);
  return { from: value.toNumber() + below, to: value.toNumber() + above, decimals, limitedBy };
}
