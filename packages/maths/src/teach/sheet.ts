import { roundingOf } from "./rounding.js";
import type { Unit } from "../engine/quantity/index.js";
import type { Run } from "../engine/formula/index.js";
import { inWords } from "../engine/working/index.js";
import type { Told, Working } from "../engine/working/index.js";
import type { KeyedSlip, SlipKey } from "./slip-key.js";

/** What a problem is made from. */
export interface ProblemWanted<I, D extends string> {
  /** An input in the units the problem is to be in, its numbers about as large. */
  readonly like: I;
  /** The unit the answer is wanted in; null for a plain number. */
  readonly unit: Unit<D> | null;
  /** The decimals asked; those the numbers have earned where none are named. */
  readonly decimals?: number;
  /** Inputs that stay as they are in `like`: the answer of an earlier sum of the same job. */
  readonly keep?: readonly (keyof I & string)[];
  /** A whole number; the same seed gives the same problem. */
  readonly seed: number;
}

/** The marks of one line of the working. */
export interface LineMarks {
  readonly line: string;
  readonly method: 1;
  readonly value: 1;
  /** Nothing where the line is a plain number. */
  readonly unit: 0 | 1;
}

/** What the pupil gets. */
export interface Question extends Told {
  readonly inputs: readonly { readonly name: string; readonly value: string; readonly meaning: string }[];
  readonly rounding: string;
  /** One blank for each line of the working, with the unit it is wanted in; empty for a plain number. */
  readonly blanks: readonly { readonly line: string; readonly unit: string }[];
  readonly marks: readonly LineMarks[];
  readonly version: number;
  readonly seed: number;
}

/** What the teacher gets. */
export interface ProblemKey extends Told {
  readonly answer: string;
  readonly working: Working;
  /** The twelve likeliest wrong answers, sorted by number; `moreSlips` are the rest. */
  readonly slips: readonly KeyedSlip[];
  readonly moreSlips: readonly KeyedSlip[];
  /** Wrong sums that give the right answer at these figures: nobody can see them. */
  readonly hidden: readonly string[];
  readonly version: number;
  readonly seed: number;
}

/** A problem: `input` and `unit` go to `check` with a pupil's answer. */
export interface Problem<I, D extends string> {
  readonly input: I;
  readonly unit: Unit<D> | null;
  readonly decimals: number;
  readonly question: Question;
  readonly key: ProblemKey;
}

interface Sheet {
  readonly worked: Run;
  readonly working: Working;
  readonly unit: Unit<string> | null;
  readonly decimals: number;
  readonly seed: number;
}

/** Raised when the same seed comes to give another problem, so that a sheet and its key are never mixed. */
const VERSION = 2;

function withUnit(number: string, unit: Unit<string> | null): string {
  return unit === null ? number : `${number} ${unit.symbol}`;
}

/** The question: every input with its unit and what it means, every percentage with its base, how to round, blanks, marks. */
export function questionOf({ worked, working, unit, decimals, seed }: Sheet): Question {
  const inputs = working.inputs.map((one) => {
    const base = worked.declared.inputs[one.key]?.base;
    return { ...one, value: base === undefined ? one.value : `${one.value} ${base}` };
  });
  const rounding = roundingOf(worked, decimals);
  const blanks = working.steps.map((step, at) => ({
    line: step.name,
    unit: at === working.steps.length - 1 ? (unit?.symbol ?? "") : step.unit,
  }));
  const marks = blanks.map(({ line, unit: own }): LineMarks => ({
    line,
    method: 1,
    value: 1,
    unit: own === "" ? 0 : 1,
  }));
  const lines = blanks.map(({ line, unit: own }, at) => {
    const marked = marks[at]?.unit === 1 ? "method 1, value 1, unit 1" : "method 1, value 1";
    return `${line} = ________ ${own === "" ? "" : `${own} `}(${marked})`;
  });
  const says = [
    `Find the ${working.name}.`,
    ...inputs.map(({ name, value, meaning }) => `${name}: ${value}${meaning === "" ? "" : `, ${meaning}`}`),
    `Write the answer ${rounding}${unit === null ? "" : `, in ${unit.name === unit.symbol ? unit.symbol : inWords(unit.name)}`}.`,
    ...lines,
    `Sheet version ${String(VERSION)}, seed ${String(seed)}.`,
  ];
  return { inputs, rounding, blanks, marks, version: VERSION, seed, says };
}

/** The last line of the working in the unit asked, where that is another. */
function turned({ worked, working, unit }: Sheet, answer: string): readonly string[] {
  const last = working.steps.at(-1);
  const own = worked.unit?.symbol ?? "";
  if (last === undefined || unit === null || own === unit.symbol) return [];
  return [`${working.result.value} is ${answer} ${unit.symbol}.`];
}

/** The key: the answer, the working, the likeliest wrong answers and what gives each, and what the rounding hides. */
export function keyOf(sheet: Sheet, answer: string, { slips, moreSlips, hidden }: SlipKey): ProblemKey {
  const { working, unit, seed } = sheet;
  const more = hidden.length > 3 ? `; and ${String(hidden.length - 3)} more` : "";
  const says = [
    `Key to ${inWords(working.name)}, sheet version ${String(VERSION)}, seed ${String(seed)}: ${withUnit(answer, unit)}.`,
    ...turned(sheet, answer),
    ...slips.map((slip) => `${withUnit(slip.answer, unit)}: ${slip.says.join("; or ")}`),
    ...(hidden.length === 0
      ? []
      : [
          `At these figures nobody can see ${hidden
            .slice(0, 3)
            .map((one) => one.replace(/,? gives this$/u, ""))
            .join("; or ")}${more}.`,
        ]),
  ];
  return { answer, working, slips, moreSlips, hidden, version: VERSION, seed, says };
}
