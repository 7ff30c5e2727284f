import { check } from "../check/index.js";
import type { Calculation } from "../engine/formula/index.js";
import { described } from "../engine/quantity/index.js";
import type { Quantity } from "../engine/quantity/index.js";
import { missingOr, refuse } from "../engine/refusal.js";
import type { Told } from "../engine/working/index.js";
import { answerOf, carriedFrom, judgedSum } from "./carried.js";
import type { JudgedBy, JudgedSum } from "./carried.js";
import { problem } from "./problem.js";
import type { ProblemKey, ProblemWanted, Question } from "./sheet.js";

/** A sum of a job as it is drawn, with its key. */
export interface SumOfJob {
  readonly name: string;
  readonly question: Question;
  readonly key: ProblemKey;
  /** What the calculation is called with, by input. */
  readonly input: Readonly<Record<string, unknown>>;
  /** The answer of the key, rounded as it is asked: what later sums take. */
  readonly answer: Quantity<string> | number;
  /** Judges an answer; one that is right from a wrong answer to an earlier sum is said to be so. */
  readonly judge: (written: string, by?: JudgedBy) => JudgedSum;
  /** What a pupil's answer stands for, to be taken on into later sums. */
  readonly read: (written: string, locale?: string) => Quantity<string> | number;
}

/** A sum of a job before anything is drawn: `jobSum` makes it. */
export interface JobSum {
  readonly name: string;
  readonly drawn: (before: ReadonlyMap<string, SumOfJob>, seed: number) => SumOfJob;
}

/** One job told in several sums. */
export interface ClassJob {
  readonly sums: readonly SumOfJob[];
  /** What the class gets. */
  readonly sheet: Told;
  /** What the teacher gets. */
  readonly key: Told;
}

/** What a sum of a job is made from. */
export interface JobSumWanted<I, D extends string> extends Omit<ProblemWanted<I, D>, "seed"> {
  /** Inputs that come of earlier sums: an answer, as "width", or an input, as "length.finishedLength". */
  readonly takes?: readonly (readonly [input: keyof I & string, from: string])[];
}

/** Refuses what is not given as it was asked for. */
function wrongKind(name: string, field: string, expected: string, given: unknown): never {
  const code = missingOr(given, "wrong-kind");
  refuse(code, [name, field], expected, described(given));
}

function isList(given: unknown, isOne: (one: unknown) => boolean = () => true): boolean {
  return Array.isArray(given) && given.every(isOne);
}

function isSum(one: unknown): boolean {
  return typeof one === "object" && one !== null && "drawn" in one && typeof one.drawn === "function";
}

function noEarlierSum(from: string, before: ReadonlyMap<string, SumOfJob>): never {
  const expected = `the name of an earlier sum (${[...before.keys()].join(", ") || "there is none"}), or one of its inputs behind a point`;
  const remedy = "Sums are drawn in the order they are given.";
  refuse("unknown-field", ["classJob", "takes"], expected, described(from), remedy);
}

/** The value that comes of an earlier sum, and how the sheet says so. */
function taken(from: string, before: ReadonlyMap<string, SumOfJob>): readonly [value: unknown, says: string] {
  const [name = "", input] = from.split(".");
  const sum = before.get(name);
  if (sum === undefined || (input !== undefined && !Object.hasOwn(sum.input, input))) return noEarlierSum(from, before);
  const number = String([...before.keys()].indexOf(name) + 1);
  return input === undefined ? [sum.answer, `the answer of sum ${number}`] : [sum.input[input], `as in sum ${number}`];
}

/**
 * A sum of a job: a calculation with numbers to draw like, some of its inputs taken from earlier sums.
 *
 * @param name by which later sums take its answer
 * @param calculation any calculation of the handbook
 * @param wanted as for `problem`, the seed left out; `takes`, the inputs that come of earlier sums
 * @throws QuantityError "missing" or "wrong-kind" without what is wanted, or where `takes` is no list
 * @example jobSum("reed", reedWidth, { like: { ends: 300, sett: endsPerInch(15) }, unit: inches, decimals: 2, takes: [["ends", "ends"]] }).name // "reed"
 */
export function jobSum<I extends object, D extends string>(
  name: string,
  calculation: Calculation<I, Quantity<D> | number>,
  wanted: JobSumWanted<NoInfer<I>, D>,
): JobSum {
  if (Object(wanted) !== wanted) wrongKind("jobSum", "wanted", "what is wanted of the sum", wanted);
  const { takes = [], ...drawing } = wanted;
  if (!isList(takes)) wrongKind("jobSum", "takes", "a list of inputs and where they come from", takes);
  return {
    name,
    drawn: (before, seed) => {
      const found = takes.map(([input, from]) => [input, ...taken(from, before)] as const);
      const like = { ...drawing.like, ...Object.fromEntries(found.map(([input, value]) => [input, value])) };
      const keep = [...(drawing.keep ?? []), ...takes.map(([input]) => input)];
      const { input, unit, decimals, question, key } = problem(calculation, { ...drawing, like, keep, seed });
      const given = Object.fromEntries<unknown>(Object.entries(input));
      const says = new Map<string, string>(found.map(([own, , told]) => [own, told]));
      return {
        name,
        key,
        input: given,
        question: carriedFrom(question, Object.keys(given), says),
        answer: answerOf(key.answer, unit),
        read: (written, locale) => answerOf(written, unit, locale),
        judge: (written, by = {}) => {
          const claim = { written, unit, decimals, ...(by.locale === undefined ? {} : { locale: by.locale }) };
          return judgedSum((other) => check(calculation, { ...input, ...other }, claim), takes, before, by);
        },
      };
    },
  };
}

/**
 * One job told in several sums that agree with each other: what a sum gives, rounded as it is asked, goes into the next.
 *
 * @param sums made by `jobSum`, each after those it takes from
 * @param seed a whole number; the same seed gives the same job
 * @throws QuantityError "missing" or "wrong-kind" without a list of sums, "unknown-field" where a sum takes from one that is not before it; also what `problem` throws
 * @example classJob([jobSum("reed", reedWidth, { like: { ends: 300, sett: endsPerInch(15) }, unit: inches, decimals: 2 })], 4).sums.length // 1
 */
export function classJob(sums: readonly JobSum[], seed: number): ClassJob {
  if (!isList(sums, isSum)) wrongKind("classJob", "sums", "a list of sums made by jobSum", sums);
  const made = new Map<string, SumOfJob>();
  for (const sum of sums) made.set(sum.name, sum.drawn(made, seed));
  const all = [...made.values()];
  const told = (of: (sum: SumOfJob) => Told): readonly string[] =>
    all.flatMap((sum, at) => [`Sum ${String(at + 1)}, ${sum.name}.`, ...of(sum).says]);
  return { sums: all, sheet: { says: told(({ question }) => question) }, key: { says: told(({ key }) => key) } };
}
