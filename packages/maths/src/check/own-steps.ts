import { declarationOf, run } from "../engine/formula/index.js";
import type { Calculation } from "../engine/formula/index.js";
import type { Run } from "../engine/formula/index.js";
import { described } from "../engine/quantity/index.js";
import { QuantityError } from "../engine/refusal.js";
import { inWords } from "../engine/working/index.js";
import { amountOf, joined } from "./hand.js";
import { sceneOf } from "./reasons.js";
import { ALIKE, RESIDUE } from "./tolerances.js";

/** A step of a pupil's own. */
export interface OwnStep {
  readonly written: string;
  /** "recognised" where it gives a figure of the working; "wrong" where its arithmetic is. */
  readonly verdict: "recognised" | "right, but no step of this working" | "wrong";
  /** What its sum comes to; empty where it was written without one. */
  readonly comesTo: string;
  /** The line it belongs to; empty where it is not recognised. */
  readonly line: string;
}

const LONGEST = 120;
const SUM = /^\s*(.*?)\s*=\s*(\d{1,20}(?:[.,]\d{1,20})?)\s*\D*$/u;
const TERM = /([+\-−×x*·÷:/]?)\s*(\d{1,20}(?:[.,]\d{1,20})?)\s*%?/gu;

function refuse(at: number, given: unknown): never {
  throw new QuantityError({
    code: "unreadable",
    function: "checkSteps",
    path: ["steps", at],
    expected: "a sum and what it gives, as 8 × 23 = 184",
    received: described(given),
    remedy: "",
  });
}

/** A chain of sums worked from left to right, products first. */
function comesTo(sum: string): number | null {
  let [total, product] = [0, Number.NaN];
  let rest = sum;
  for (const [all, op = "", digits = ""] of sum.matchAll(TERM)) {
    rest = rest.replace(all, "");
    const own = Number(digits.replace(",", "."));
    if (op === "" || op === "+" || op === "-" || op === "−") {
      if (!Number.isNaN(product)) total += product;
      product = op === "-" || op === "−" ? -own : own;
    } else product = op === "÷" || op === ":" || op === "/" ? product / own : product * own;
  }
  return /\d|[()]/u.test(rest) || Number.isNaN(product) ? null : total + product;
}

/** Judges steps that no line of the formula names. */
function judgedSteps(run: Run, steps: readonly string[]): readonly OwnStep[] {
  const scene = sceneOf(run, run.unit);
  const figures = scene.places.flatMap(({ hand, line }) => {
    const prefixes =
      hand.op === "product" ? hand.parts.map((_, last) => joined("product", hand.parts.slice(0, last + 1))) : [hand];
    return prefixes.map((one) => ({ line, value: amountOf(one, scene.values, scene.known) }));
  });
  return steps.map((written, at) => {
    if (typeof written !== "string" || written.length > LONGEST) return refuse(at, written);
    const [, sum = "", digits = ""] = SUM.exec(written) ?? refuse(at, written);
    const claimed = Number(digits.replace(",", "."));
    const half = 0.5 * 10 ** -(digits.split(/[.,]/u)[1]?.length ?? 0);
    const own = comesTo(sum);
    const near = (x: unknown): boolean =>
      typeof x === "number" && Math.abs(Math.abs(x) - claimed) <= half * (1 + ALIKE) + RESIDUE;
    const found = figures.find(({ value }) => near(value));
    const isWrong = own !== null && !near(own);
    const verdict = isWrong ? "wrong" : found === undefined ? "right, but no step of this working" : "recognised";
    return {
      written,
      verdict,
      comesTo: own === null ? "" : String(Number(own.toPrecision(12))),
      line: verdict === "recognised" ? inWords(found?.line ?? "") : "",
    };
  });
}

/**
 * Steps a pupil wrote that no line of the formula names, such as "8 × 23 = 184": taken where they are recognised.
 *
 * @param calculation any calculation of the handbook
 * @param input what one would call it with
 * @param steps each step as written, a sum and what it gives
 */
export function checkSteps<I>(
  calculation: Calculation<I, unknown>,
  input: NoInfer<I>,
  steps: readonly string[],
): readonly OwnStep[] {
  const worked = run(declarationOf("checkSteps", calculation), input);
  return judgedSteps(worked, steps);
}
