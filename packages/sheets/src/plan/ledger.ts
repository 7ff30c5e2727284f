import { inWords, spreadsheetLines } from "@thrum/maths";
import type { Cell, Declared, Source } from "@thrum/maths";
import { answerTests } from "../calculation/bounds.js";
import { definedName } from "../calculation/given.js";
import type { GivenCell } from "../calculation/given.js";
import type { WorkingLine } from "../calculation/working-row.js";
import { find, numberIn, put, unitOrNone } from "./known.js";
import type { Amount, Known } from "./known.js";
import type { Between, Group, Item, Stated, Sum } from "./item.js";

type Input = Declared["inputs"][string];

/** A cell that a reader may change, with its name. */
export interface NamedGiven extends GivenCell {
  readonly what: "given";
  readonly name: string;
}

/** An answer with the lines it is worked out in, the last of them its own. */
export interface Answered {
  readonly what: "answer";
  readonly label: string;
  readonly name: string;
  readonly lines: readonly (WorkingLine & { readonly name: string })[];
  /** What must hold of the lines for the answer to be one. */
  readonly tests: string;
  readonly unit: string;
  readonly now: number;
  /** Whether it is a count of things, which is whole. */
  readonly isCount: boolean;
  readonly source: Source | null;
}

/** A group with its cells in their order: what is given always stands above what reads it. */
export interface LedgerGroup {
  readonly heading: string;
  readonly entries: readonly (NamedGiven | Answered)[];
}

/** `yarn1_package_mass` without its yarn, as a reader says it. */
function inPlainWords(name: string): string {
  return name.replace(/^yarn\d+_/u, "").replace(/_/gu, " ");
}

function given(cells: Known, name: string, label: string, value: Amount, input: Input): NamedGiven {
  put(cells, name, value);
  const unit = unitOrNone(value);
  return { what: "given", name, label, value: numberIn(value, unit), unit, input };
}

function sumEntries(cells: Known, { name, label, calculation, input, reads, answer }: Sum): LedgerGroup["entries"] {
  const { inputs, lines: declaredLines, atLeast, result, source } = calculation.declaration;
  const givens: NamedGiven[] = [];
  const read = Object.entries(inputs).map(([field, declared]): [string, Cell] => {
    const value = input[field] as Amount;
    const own = reads[field] ?? definedName(field);
    const known = find(cells, own, value);
    if (known !== null) return [field, known];
    const other = reads[field];
    const label = other === undefined ? inWords(field) : inPlainWords(other);
    givens.push(given(cells, own, label, value, declared));
    const unit = unitOrNone(value);
    return [field, unit === null ? own : [own, unit]];
  });
  const unit = unitOrNone(answer);
  const now = numberIn(answer, unit);
  const plain = (line: string): string => `${name}_${definedName(line)}`;
  const linesAt = (place: (line: string) => string) =>
    spreadsheetLines(calculation, Object.fromEntries(read), unit, place);
  const last = linesAt(plain).at(-1)?.name ?? declaredLines.at(-1)?.name;
  const place = (line: string): string => (line === last ? name : plain(line));
  const lines = linesAt(place).map(({ name: line, ...rest }) => ({
    ...{ name: place(line), label: inWords(line), now: line === last ? now : null },
    ...rest,
  }));
  put(cells, name, answer);
  const tests = answerTests({ atLeast, result }, unit, place, name);
  const answered = {
    label,
    name,
    lines,
    tests,
    unit: unit?.symbol ?? result.noun,
    now,
    isCount: unit === null,
    source,
  };
  return [...givens, { what: "answer", ...answered }];
}

function betweenEntry(cells: Known, { name, label, words, formula, noun, answer }: Between): Answered {
  put(cells, name, answer);
  const unit = unitOrNone(answer);
  const now = numberIn(answer, unit);
  const symbol = unit?.symbol ?? noun;
  const line = { name, label, words, formula, unit: symbol, now };
  return {
    what: "answer",
    label,
    name,
    lines: [line],
    tests: "TRUE",
    unit: symbol,
    now,
    isCount: unit === null,
    source: null,
  };
}

function statedEntry(cells: Known, { name, label, value, input }: Stated): NamedGiven {
  return given(cells, name, label, value, input);
}

function entriesOf(cells: Known, item: Item): LedgerGroup["entries"] {
  switch (item.what) {
    case "sum":
      return sumEntries(cells, item);
    case "between":
      return [betweenEntry(cells, item)];
    case "stated":
      return [statedEntry(cells, item)];
  }
}

/** Gives every input and line of the sums its cell: inputs of one name share it, and an answer is read where it stands. */
export function ledgerOf(groups: readonly Group[]): readonly LedgerGroup[] {
  const cells: Known = new Map();
  return groups.map(({ heading, items }) => ({ heading, entries: items.flatMap((item) => entriesOf(cells, item)) }));
}
