import { candidatesOf } from "./line-candidates.js";
import type { Candidate } from "./line-candidates.js";
import type { JudgedLine, LineOptions, WrittenLine } from "./judged-line.js";
import { rangeOf } from "./line-range.js";
import type { Range } from "./line-range.js";
import { Decimal, decimalText, EXACT_STEP } from "../engine/numbers.js";
import { declarationOf, run, stepsOf } from "../engine/formula/index.js";
import type { Calculation, Run, Value } from "../engine/formula/index.js";
import { described } from "../engine/quantity/index.js";
import { QuantityError } from "../engine/refusal.js";
import { inWords } from "../engine/working/index.js";
import { foundFor } from "./found.js";
import { lineScene, lineWeights } from "./line-scene.js";

/** A figure for a line the formula does not have would be passed over without a word. */
function refuseOthers(figures: object, lines: readonly string[]): void {
  const other = Object.keys(figures).find((name) => !lines.includes(name));
  if (other === undefined) return;
  const place = { function: "firstWrongLine", path: [other] };
  const expected = `only ${lines.join(", ")}`;
  throw new QuantityError({ code: "unknown-field", ...place, expected, received: described(other), remedy: "" });
}

/**
 * Judges a whole working line by line, so that one slip is reported once. A line is right if it follows from the exact figures or
 * from those written above it.
 *
 * @param calculation any calculation of the handbook
 * @param input what one would call it with
 * @param figures the figure written for each line, by the line's name, alone or with its unit; a line left out is taken for right
 * @param options the unit the answer was asked in, marks for method, value and unit, the language of the figures
 * @throws QuantityError "unreadable" for a figure that is no number, "unknown-field" for a line the formula does not have
 */
export function firstWrongLine<I>(
  calculation: Calculation<I, unknown>,
  input: NoInfer<I>,
  figures: Readonly<Record<string, WrittenLine>>,
  options: LineOptions = {},
): readonly JudgedLine[] {
  const worked = run(declarationOf("firstWrongLine", calculation), input);
  const lines = worked.steps.map(({ name }) => name);
  refuseOthers(figures, lines);
  const known = new Map<string, Value>(worked.values);
  const above = new Map<string, Range>();
  const judged: JudgedLine[] = [];
  let isSpoilt = false;
  for (const [at, step] of worked.steps.entries()) {
    const { name, value: own } = step;
    const figure = Object.hasOwn(figures, name) ? figures[name] : undefined;
    const from = stepsOf([step], known, worked.nearness).steps[0]?.value ?? own;
    if (figure === undefined || !(own instanceof Decimal) || !(from instanceof Decimal)) {
      known.set(name, from);
      continue;
    }
    const range = rangeOf(step, known, above, worked.nearness) ?? { low: from, high: from };
    const candidates = candidatesOf(worked, name, figure, options);
    const half = ({ step: one, counting }: Candidate): Decimal => counting.inFrame(one).abs().div(2);
    const valueOf = ({ claimed, counting }: Candidate): Decimal => counting.inFrame(claimed);
    const rounds = (one: Candidate): boolean => {
      const exact = one.counting
        .outOfFrame(own)
        .div(one.step)
        .toDecimalPlaces(0, Decimal.ROUND_HALF_UP)
        .times(one.step);
      return exact.eq(one.claimed);
    };
    const follows = (one: Candidate): boolean => {
      const [low, high] = [range.low.minus(half(one)), range.high.plus(half(one))];
      const residue = own.abs().times(EXACT_STEP);
      return valueOf(one).gte(low.minus(residue)) && valueOf(one).lte(high.plus(residue));
    };
    const isLast = at === lines.length - 1;
    const upTo = (one: Candidate): boolean =>
      isLast &&
      worked.declared.forUse === "up" &&
      [1, 2, 4].some(
        (parts) =>
          one.claimed.times(parts).eq(one.counting.outOfFrame(from).times(parts).ceil()) &&
          one.claimed.div(one.counting.outOfFrame(from)).lt("1.02"),
      );
    const right = candidates.find(rounds);
    const led = right ?? candidates.find(follows);
    const used = led ?? candidates.find(upTo) ?? candidates[0];
    if (used === undefined) continue;
    const verdict: JudgedLine["verdict"] =
      right !== undefined
        ? "right"
        : led !== undefined
          ? isSpoilt
            ? "right from the figure above"
            : "right, lines rounded"
          : upTo(used)
            ? "right, rounded up"
            : "wrong";
    const target = used.counting.outOfFrame(from);
    const slips = verdict === "wrong" ? slipsOf(worked, at, known, used) : [];
    const text = typeof figure === "string" ? figure : figure[0];
    const marks = options.marks ?? { method: 0, value: 0, unit: 0 };
    const isValue = verdict !== "wrong" && verdict !== "right from the figure above";
    judged.push({
      line: inWords(name),
      written: text,
      verdict,
      unit: used.counting.symbol,
      slips,
      rounded: decimalText(
        target.div(used.step).toDecimalPlaces(0, Decimal.ROUND_HALF_UP).times(used.step).toSignificantDigits(15),
      ),
      marks:
        (verdict === "wrong" ? 0 : marks.method) +
        (isValue ? marks.value : 0) +
        (used.hasUnit || used.counting.symbol === "" ? marks.unit : 0),
    });
    const written = valueOf(used);
    if (verdict === "wrong") isSpoilt = true;
    const exactly = written.eq(own);
    const width = exactly ? new Decimal(0) : half(used);
    const ends = isSpoilt
      ? [written.minus(width), written.plus(width)]
      : [written.minus(width), written.plus(width), own];
    above.set(name, { low: Decimal.min(...ends), high: Decimal.max(...ends) });
    known.set(name, isSpoilt ? written : own);
  }
  return judged;
}

/** What was done at a wrong line, by the evidence rule on that line's own sum. */
function slipsOf(
  worked: Run,
  at: number,
  known: ReadonlyMap<string, Value>,
  { claimed, step, counting }: Candidate,
): readonly string[] {
  const scene = lineScene(worked, at, known);
  const exact = Number(scene.known.get(scene.hand) ?? Number.NaN);
  if (!Number.isFinite(exact)) return [];
  const [value, width] = [counting.inFrame(claimed).toNumber(), Math.abs(counting.inFrame(step).toNumber())];
  return foundFor(scene, lineWeights(scene, exact), { exact, step: width, near: 0, claimed: value }).slips.map(
    ({ says }) => says,
  );
}
