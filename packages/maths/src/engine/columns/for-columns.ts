import type { FaultPath, Place } from "../refusal.js";
import type { Quantity, Unit } from "../quantity/index.js";
import { anything, declarationOf, plainTree, writtenOut } from "../formula/index.js";
import type { Calculation, Declared, Input, Range, Tree } from "../formula/index.js";
import { BLOCK, nodeOf } from "./blocks.js";
import type { Node } from "./blocks.js";
import { boundsOf, checkGiven, checkOutcome } from "./bounds.js";
import type { Outcome, Source } from "./bounds.js";
import { inWords } from "../working/index.js";
import { isNumberArray, readColumns } from "./given.js";
import type { Column, Given } from "./given.js";

/** A formula made ready for lists of so many members, its answer last; lines that have a least value stand before it. */
interface Program {
  readonly sources: ReadonlyMap<string, Source>;
  readonly outcomes: readonly Outcome[];
}

/** The answers, one a row, and what they are: "warp length (yd)". */
export interface LabelledColumn extends Float64Array {
  readonly label: string;
}

type Columns<I> = Readonly<Partial<Record<keyof I & string, Column | readonly Column[]>>>;

/**
 * A calculation over whole columns of plain numbers: units are checked once, when this is called; ranges at every row.
 *
 * A column reckons in doubles, its roundings guarded at twelve digits. A list among the inputs is a list of columns, one
 * for each of its members.
 *
 * @param calculation any calculation of the handbook
 * @param units for each quantity the unit its column is in, for each unit input the unit; plain counts may be left out
 * @param unit the unit the answers are wanted in; null for an answer that is a plain number
 * @returns a function from columns to the column of answers, as long as the longest given, with its `label`
 * @throws QuantityError "wrong-kind" for a unit of another kind, "out-of-range" or "no-answer" with the row for a number
 */
export function forColumns<I, D extends string>(
  calculation: Calculation<I, Quantity<D> | number>,
  units: Readonly<Partial<Record<keyof I & string, Unit<string>>>>,
  unit: Unit<D> | null,
): (columns: Columns<I>) => LabelledColumn {
  const declared = declarationOf("forColumns", calculation);
  const byField = units as Readonly<Record<string, Unit<string> | undefined>>;
  const where = (field: string): Place => ["forColumns", ...placeOf(field)];
  const tree = plainTree(declared, "forColumns", byField, unit);
  const label = `${inWords(declared.name)} (${unit?.symbol ?? declared.result.noun})`;
  const held = heldLines(declared, byField);
  const programs = new Map<string, Program>();
  const programFor = (names: readonly string[], sizes: ReadonlyMap<string, number>): Program => {
    const made = programs.get(names.join());
    if (made !== undefined) return made;
    const sources = new Map(names.map((name) => [name, sourceOf(name, declared.inputs, byField, where)]));
    const leaf = (name: string): Node => {
      const source = sources.get(name);
      return source === undefined ? { constant: Number.NaN } : { fill: () => source.block };
    };
    const outcome = (of: Tree, noun: string, range: Range, own: Unit<string> | null, wholes: boolean): Outcome => {
      const place = { where: ["forColumns"] as const, noun, wholes, ...boundsOf(range, own) };
      return { ...place, root: nodeOf(writtenOut(of, sizes), leaf) };
    };
    const { noun, range } = declared.result;
    const lines = held.map(({ name, line, least }) =>
      outcome(line, name, { ...anything, atLeast: least }, null, false),
    );
    const program = {
      sources,
      outcomes: [...lines, outcome(tree, noun, range, unit, declared.result.what === "whole")],
    };
    programs.set(names.join(), program);
    return program;
  };
  return (columns) => {
    const given = readColumns(declared.inputs, columns, where);
    const out = answers(programFor([...given.columns.keys()], given.sizes), given);
    return Object.defineProperty(out, "label", { value: label }) as LabelledColumn;
  };
}

/** `counts[1]` is a member of the input `counts`. */
function fieldOf(name: string): string {
  return name.replace(/\[\d+\]$/u, "");
}

/** `counts[1]` as a path: counts, 1. */
function placeOf(name: string): FaultPath {
  const [, field = name, at] = /^(.*)\[(\d+)\]$/u.exec(name) ?? [];
  return at === undefined ? [field] : [field, Number(at)];
}

function sourceOf(
  name: string,
  inputs: Readonly<Record<string, Input<unknown>>>,
  units: Readonly<Record<string, Unit<string> | undefined>>,
  where: (field: string) => Place,
): Source {
  const declared = inputs[fieldOf(name)];
  const input = declared?.member ?? declared;
  if (input === undefined) throw new RangeError(`no input ${name}`);
  const own = new Float64Array(BLOCK);
  return { where: where(name), input, ...boundsOf(input.range, units[fieldOf(name)] ?? null), own, block: own };
}

/** The lines of a formula that have a least value, each as one tree. */
function heldLines(
  declared: Declared,
  units: Readonly<Record<string, unknown>>,
): readonly { readonly name: string; readonly line: Tree; readonly least: number }[] {
  return Object.entries(declared.atLeast).map(([name, least]) => {
    const lines = declared.lines.slice(0, declared.lines.findIndex((line) => line.name === name) + 1);
    const result = { ...declared.result, what: "number" } as const;
    return { name, line: plainTree({ ...declared, lines, result }, "forColumns", units, null), least };
  });
}

function answers({ sources, outcomes }: Program, { columns, rows }: Given): Float64Array {
  const out = new Float64Array(rows);
  for (let start = 0; start < rows; start += BLOCK) {
    const size = Math.min(BLOCK, rows - start);
    for (const [name, source] of sources) {
      source.block = blockOf(columns.get(name) ?? Number.NaN, source.own, start, size);
      checkGiven(source, source.block, start, size);
    }
    const block = out.subarray(start, start + size);
    for (const outcome of outcomes) {
      const { root } = outcome;
      if ("constant" in root) block.fill(root.constant);
      else block.set(root.fill(size).subarray(0, size));
      checkOutcome(outcome, block, start);
    }
  }
  return out;
}

function blockOf(column: Column, own: Float64Array, start: number, size: number): Float64Array {
  if (column instanceof Float64Array) return column.subarray(start, start + size);
  if (typeof column === "number") return own.fill(column, 0, size);
  if (isNumberArray(column)) {
    own.set(column.subarray(start, start + size));
    return own;
  }
  for (let row = 0; row < size; row++) {
    const one: unknown = column[start + row];
    // Set into a block, text and null would turn into numbers unseen.
    own[row] = typeof one === "number" ? one : Number.NaN;
  }
  return own;
}
