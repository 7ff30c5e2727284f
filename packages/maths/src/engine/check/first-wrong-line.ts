import { Decimal, decimalText } from "../numbers.js";
import { declarationOf, run, stepsOf } from "../formula/index.js";
import type { Calculation, Run, Step, Value } from "../formula/index.js";
import { described } from "../quantity/index.js";
import { QuantityError } from "../refusal.js";
import { inWords } from "../working/index.js";
import { readClaim } from "./claim.js";
import { slipsOf } from "./slips.js";

/** One line of a working written by hand, judged from the lines above it as they were written. */
export interface JudgedLine {
  readonly line: string;
  readonly written: string;
  /** "right from the figure above" where an earlier figure was wrong and this line did right by it. */
  readonly verdict: "right" | "right from the figure above" | "wrong";
  /** What the line comes to from the figures above it, to the digits written. */
  readonly rounded: string;
  /** The slips that give the figure; only a wrong line has any. */
  readonly slips: readonly string[];
}

function slipsAt(
  worked: Run,
  at: number,
  above: readonly Step[],
  isClaim: (value: Decimal) => boolean,
): readonly string[] {
  const { declared, nearness } = worked;
  const name = declared.lines[at]?.name ?? "";
  const sofar = {
    ...worked,
    declared: { ...declared, slips: [], lines: declared.lines.slice(0, at + 1) },
    steps: above,
  };
  const says = [...slipsOf(sofar)]
    .filter(({ line, from }) => line === name && from === at)
    .sort((a, b) => a.rank - b.rank)
    .filter(({ lines, values }) => {
      const { steps } = stepsOf(lines.slice(at), values, nearness);
      const end = steps[0]?.value;
      return end instanceof Decimal && isClaim(end);
    })
    .map((slip) => `a sum that ${slip.says()} gives this`);
  return [...new Set(says)];
}

/** A figure for a line the formula does not have would be passed over without a word. */
function refuseOthers(figures: object, lines: readonly string[]): void {
  const other = Object.keys(figures).find((name) => !lines.includes(name));
  if (other === undefined) return;
  const [path, expected] = [[other], `only ${lines.join(", ")}`];
  const place = { function: "firstWrongLine", path };
  throw new QuantityError({ code: "unknown-field", ...place, expected, received: described(other), remedy: "" });
}

/**
 * Judges a whole working line by line, so that one slip is reported once: each line from those above it as written.
 *
 * @param calculation any calculation of the handbook
 * @param input what one would call it with
 * @param figures the number written for each line, by the line's name, counted in the units `explain` works in; a line left out is
 *   taken for right
 * @throws QuantityError "unreadable" for a figure that is no number, "unknown-field" for a line the formula does not have
 */
export function firstWrongLine<I>(
  calculation: Calculation<I, unknown>,
  input: NoInfer<I>,
  figures: Readonly<Record<string, string>>,
): readonly JudgedLine[] {
  const worked = run(declarationOf("firstWrongLine", calculation), input);
  refuseOthers(
    figures,
    worked.steps.map(({ name }) => name),
  );
  const known = new Map<string, Value>(worked.values);
  const above: Step[] = [];
  const judged: JudgedLine[] = [];
  worked.steps.forEach(({ name, tree, value: own }, at) => {
    const from = stepsOf([{ name, tree }], known, worked.nearness).steps[0]?.value;
    const text = Object.hasOwn(figures, name) ? figures[name] : undefined;
    let carried: Value = from ?? own;
    if (text !== undefined && from instanceof Decimal && own instanceof Decimal) {
      const [claimed, decimals] = readClaim(["firstWrongLine", name], text, undefined);
      const isClaim = (value: Decimal): boolean => value.toDecimalPlaces(decimals, Decimal.ROUND_HALF_UP).eq(claimed);
      const verdict = isClaim(own) ? "right" : isClaim(from) ? "right from the figure above" : "wrong";
      const slips = verdict === "wrong" ? slipsAt(worked, at, above, isClaim) : [];
      const rounded = decimalText(from.toDecimalPlaces(decimals, Decimal.ROUND_HALF_UP));
      judged.push({ line: inWords(name), written: text, verdict, rounded, slips });
      carried = verdict === "right" ? own : claimed;
    }
    known.set(name, carried);
    above.push({ name, tree, value: carried });
  });
  return judged;
}
