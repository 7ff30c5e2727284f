import { Decimal } from "../engine/numbers.js";
import { readWritten } from "../check/index.js";
import type { Verdict } from "../check/index.js";
import { makeQuantity } from "../engine/quantity/index.js";
import type { Quantity, Unit } from "../engine/quantity/index.js";
import { reading } from "../engine/refusal.js";
import type { Told } from "../engine/working/index.js";
import type { Question } from "./sheet.js";

/** An answer to a sum of a job, judged. */
export interface JudgedSum extends Told {
  readonly verdict: Verdict;
  /** The earlier sums whose wrong figures this one follows from rightly; none where it was judged by the right ones. */
  readonly carriedFrom: readonly string[];
}

/** What an answer to a sum of a job is judged by. */
export interface JudgedBy {
  /** The pupil's answers to earlier sums, by the names of these. */
  readonly answers?: Readonly<Record<string, string>>;
  /** The language the numbers are written in, such as "de". */
  readonly locale?: string;
}

/** A written answer as the number or quantity that goes into the next sum. */
export function answerOf(written: string, unit: Unit<string> | null, locale?: string): Quantity<string> | number {
  const { value } = readWritten(["classJob", "written"], written, unit, locale);
  return unit === null ? value.toNumber() : makeQuantity(unit, value);
}

/** The question with a word at each number that comes of an earlier sum. */
export function carriedFrom(question: Question, names: readonly string[], says: ReadonlyMap<string, string>): Question {
  const inputs = question.inputs.map((one, at) => {
    const told = says.get(names[at] ?? "");
    return told === undefined ? one : { ...one, meaning: one.meaning === "" ? told : `${one.meaning}; ${told}` };
  });
  const lines = inputs.map(({ name, value, meaning }) => `${name}: ${value}${meaning === "" ? "" : `, ${meaning}`}`);
  const [head = "", ...rest] = question.says;
  return { ...question, inputs, says: [head, ...lines, ...rest.slice(lines.length)] };
}

interface Earlier {
  readonly answer: Quantity<string> | number;
  readonly read: (written: string, locale?: string) => Quantity<string> | number;
}

const numberOf = (one: Quantity<string> | number): Decimal => new Decimal(typeof one === "number" ? one : one.value);

/** An answer by the right figures of the earlier sums, and where it is wrong by those, by the pupil's own. */
export function judgedSum(
  judge: (other: Readonly<Record<string, unknown>>) => Verdict,
  takes: readonly (readonly [input: string, from: string])[],
  before: ReadonlyMap<string, Earlier>,
  { answers = {}, locale }: JudgedBy,
): JudgedSum {
  const verdict = judge({});
  const none = { verdict, carriedFrom: [], says: verdict.says };
  if (verdict.value !== "wrong") return none;
  const other = takes.flatMap(([input, from]) => {
    const [sum, written] = [before.get(from), answers[from]];
    if (sum === undefined || written === undefined) return [];
    const read = reading(() => sum.read(written, locale));
    return read.ok && !numberOf(read.value).eq(numberOf(sum.answer)) ? [{ input, from, value: read.value }] : [];
  });
  if (other.length === 0) return none;
  const again = reading(() => judge(Object.fromEntries(other.map(({ input, value }) => [input, value]))));
  if (!again.ok || !again.value.sound) return none;
  const names = other.map(({ from }) => from);
  const says = [`Right from your own figure of ${names.join(" and ")}, which is to be looked at first.`];
  return { verdict, carriedFrom: names, says };
}
