// What `check` makes of wrong methods, plain slips of arithmetic, sound rounded workings and right answers that it had no part in
// making: wrong methods are plain arithmetic on plain numbers, right answers come of fractions, plain slips of long
// multiplication and division.
import { check, QuantityError } from "@thrum/maths";
import type { Verdict } from "@thrum/maths";
import { plainSlip } from "./plain-slips.js";
import { randomFrom } from "../random.js";
import { linesInFractions } from "../rational.js";
import { roundedWorking } from "./rounded-workings.js";
import { calculationOf, questionOf, unitNamed } from "./wrong-methods/question.js";
import type { Question } from "./wrong-methods/question.js";
import type { Sum } from "./wrong-methods/sum.js";

export type Judge = (sum: Sum, question: Question, written: string) => Verdict;

/** What became of claims of one kind. */
export interface Row {
  readonly name: string;
  claims: number;
  first: number;
  further: number;
  another: number;
  nothing: number;
  /** Named first or alone where sums that only would fit are told too. */
  asked: number;
  /** Not to be seen at these figures: right, or within a rounding. */
  hidden: number;
}

export interface Result {
  readonly families: readonly Row[];
  readonly figures: readonly Row[];
  readonly all: Row;
  /** Every family counted alike, in parts of one. */
  readonly unweighted: { readonly first: number; readonly another: number };
  readonly certain: { claims: number; right: number };
  readonly likely: { claims: number; right: number };
  readonly plain: {
    claims: number;
    certain: number;
    named: number;
    asked: number;
    readonly byFormula: Map<string, [number, number]>;
  };
  readonly rounded: { claims: number; right: number; nearly: number; wrong: number; accused: number };
  readonly right: { claims: number; refused: number };
  most: number;
}

export const ownCheck: Judge = (sum, { input }, written) =>
  check(calculationOf(sum), input as never, { written, unit: unitNamed(sum.asked) });

const rowNamed = (name: string): Row => ({
  name,
  claims: 0,
  first: 0,
  further: 0,
  another: 0,
  nothing: 0,
  asked: 0,
  hidden: 0,
});

/** As a pupil writes it: whole, as money, or to so many figures. */
function writtenTo(sum: Sum, value: number, figures: number): string | null {
  if (!Number.isFinite(value) || value <= 0 || value > 1e12) return null;
  if (sum.whole) return String(Math.round(value));
  if (sum.asked === "EUR") return value.toFixed(2);
  const decimals = figures - 1 - Math.floor(Math.log10(value));
  return value.toFixed(Math.max(0, decimals));
}

/** Two sums are one where they agree to four figures: a pound of 453.6 g is one of 453.59. */
const SAME = 1e-4;

function alike(sum: Sum, a: number | null, b: number): boolean {
  if (a === null) return !Number.isFinite(b);
  return sum.whole ? Math.round(a) === Math.round(b) : Math.abs(a - b) <= SAME * Math.abs(b);
}

const TURNS = [0, 1, 2] as const;
/** A slip in a last place is often rounded away: so many are drawn at most for one that shows. */
const TRIES = 6;
const figuresOf = (sum: Sum): readonly number[] => (sum.whole || sum.asked === "EUR" ? [0] : [4, 3]);

/** The right answer in fractions, rounded half up in whole numbers; null where the formula has a root. */
function rightText(sum: Sum, { input }: Question, decimals: number): string | null {
  const { declaration } = calculationOf(sum);
  if (declaration.formula.includes("√") || sum.asked === "EUR") return null;
  const last = linesInFractions(declaration, input).get(declaration.lines.at(-1)?.name ?? "");
  if (last === undefined || typeof last[0] !== "bigint") return null;
  const [over, under] = last as readonly [bigint, bigint];
  const unit = declaration.inputs[String(declaration.resultIn)]?.what === "unit" ? null : unitNamed(sum.asked);
  const [n, d] = unit === null ? [1n, 1n] : [BigInt(unit.scale[0]), BigInt(unit.scale[1])];
  const [a, b] = [over * d * 10n ** BigInt(decimals), under * n];
  const steps = String((2n * a + b) / (2n * b)).padStart(decimals + 1, "0");
  return decimals === 0 ? steps : `${steps.slice(0, -decimals)}.${steps.slice(-decimals)}`;
}

export function simulate(sums: readonly Sum[], seed: number, judge: Judge = ownCheck, plainEach = 40): Result {
  const random = randomFrom(seed);
  const families = new Map<string, Row>();
  const byFigures = new Map<string, Row>();
  const all = rowNamed("all");
  const result: Result = {
    families: [],
    figures: [],
    all,
    unweighted: { first: 0, another: 0 },
    most: 0,
    certain: { claims: 0, right: 0 },
    likely: { claims: 0, right: 0 },
    plain: { claims: 0, certain: 0, named: 0, asked: 0, byFormula: new Map() },
    rounded: { claims: 0, right: 0, nearly: 0, wrong: 0, accused: 0 },
    right: { claims: 0, refused: 0 },
  };
  const rows = (family: string, figures: number): readonly Row[] => {
    const kind = figures === 0 ? "whole numbers and money" : `${String(figures)} figures`;
    for (const [map, name] of [
      [families, family],
      [byFigures, kind],
    ] as const)
      if (!map.has(name)) map.set(name, rowNamed(name));
    return [all, families.get(family) ?? all, byFigures.get(kind) ?? all];
  };
  for (const sum of sums) {
    for (const turn of TURNS) {
      const question = questionOf(sum, turn);
      const others = [0, 1, 2].map((more) => questionOf(sum, turn + more));
      for (const figures of figuresOf(sum)) {
        for (const [family, , wrong] of sum.wrong) {
          const text = writtenTo(sum, wrong(question.plain), figures);
          if (text === null) continue;
          const verdict = judge(sum, question, text);
          const own = rows(family, figures);
          const count = (key: Exclude<keyof Row, "name">): void => {
            for (const row of own) row[key] += 1;
          };
          count("claims");
          if (verdict.value !== "wrong") {
            count("hidden");
            continue;
          }
          const isTrue = (slip: Verdict["slips"][number]): boolean =>
            others.every(({ plain, input }) => alike(sum, slip.at(input), wrong(plain)));
          const at = verdict.slips.findIndex(isTrue);
          count(at === 0 ? "first" : at > 0 ? "further" : verdict.slips.length > 0 ? "another" : "nothing");
          const [asked] = [...verdict.slips, ...verdict.wouldFit];
          if (asked !== undefined && isTrue(asked)) count("asked");
          const [first] = verdict.slips;
          if (first !== undefined && first.certainty !== "would fit") {
            result[first.certainty].claims += 1;
            if (at === 0) result[first.certainty].right += 1;
          }
          result.most = Math.max(result.most, verdict.slips.length, verdict.says.length);
        }
        const answer = sum.right(question.plain);
        const factors = Object.values(question.numbers)
          .flat()
          .filter((one) => one > 0);
        const wanted = plainEach / (TURNS.length * figuresOf(sum).length);
        for (let [wrong, tries] = [0, 0]; wrong < wanted && tries < TRIES * wanted; tries += 1) {
          const text = writtenTo(sum, plainSlip(answer, factors, figures === 0 ? 4 : figures, random), figures);
          if (text === null) continue;
          const verdict = judge(sum, question, text);
          if (verdict.value !== "wrong") continue;
          wrong += 1;
          const [first] = verdict.slips;
          const tally = result.plain.byFormula.get(sum.formula) ?? [0, 0];
          result.plain.byFormula.set(sum.formula, [tally[0] + 1, tally[1] + Number(first !== undefined)]);
          result.plain.claims += 1;
          if (first?.certainty === "certain") {
            result.plain.certain += 1;
            result.certain.claims += 1;
          }
          if (first?.certainty === "likely") result.likely.claims += 1;
          if (first !== undefined) result.plain.named += 1;
          if (first !== undefined || verdict.wouldFit.length > 0) result.plain.asked += 1;
        }
      }
      for (const [lines, last] of [
        [5, 4],
        [4, 3],
        [3, 3],
        [4, 4],
      ] as const) {
        for (const steps of ["lines", "every step"] as const) {
          const exact = sum.right(question.plain);
          const { declaration } = calculationOf(sum);
          const plain = roundedWorking(declaration, question.input, 20, "lines");
          const value = (roundedWorking(declaration, question.input, lines, steps) / plain) * exact;
          const text = writtenTo(sum, value, last);
          if (text === null || sum.whole) continue;
          const verdict = judge(sum, question, text);
          result.rounded.claims += 1;
          if (verdict.value === "right") result.rounded.right += 1;
          else if (verdict.value === "wrong") result.rounded.wrong += 1;
          else result.rounded.nearly += 1;
          if (verdict.slips.length > 0) result.rounded.accused += 1;
        }
      }
      for (const decimals of sum.whole ? [0] : [1, 2, 3, 4]) {
        try {
          const text = rightText(sum, question, decimals);
          if (text === null) continue;
          result.right.claims += 1;
          if (judge(sum, question, text).value !== "right") result.right.refused += 1;
        } catch (error) {
          if (!(error instanceof QuantityError)) throw error;
        }
      }
    }
  }
  const found = [...families.values()];
  const mean = (key: "first" | "another"): number =>
    found.reduce((total, row) => total + row[key] / Math.max(1, row.claims - row.hidden), 0) / found.length;
  return {
    ...result,
    families: found,
    figures: [...byFigures.values()],
    unweighted: { first: mean("first"), another: mean("another") },
  };
}
