import { described } from "../quantity/index.js";
import type { Quantity, Unit } from "../quantity/index.js";
import { QuantityError } from "../refusal.js";
import type { RefusalCode } from "../refusal.js";
import { declarationOf, plainTree, writtenOut } from "../formula/index.js";
import type { Calculation, Input } from "../formula/index.js";
import { BLOCK, nodeOf } from "./blocks.js";
import type { Node } from "./blocks.js";
import { readColumns } from "./given.js";
import type { Column, Given } from "./given.js";

/** The least and the first too large number of an input, counted in the unit of its column. */
function boundsOf({ range }: Input<unknown>, unit: Unit<string> | null): readonly [least: number, tooLarge: number] {
  const [over, under] = unit?.scale ?? [1, 1];
  const least = range.above === 0 ? Number.MIN_VALUE : ((range.atLeast ?? -Infinity) * under) / over;
  const tooLarge = range.atMost === undefined ? (range.below ?? Infinity) : range.atMost * (1 + Number.EPSILON);
  return [least, (tooLarge * under) / over];
}

/** Looks at every number of a block; the first that does not fit is refused with its row. */
function check({ where, input, least, tooLarge }: Source, block: Float64Array, start: number, rows: number): void {
  const wholes = input.what === "whole";
  let fitting = 0;
  for (let row = 0; row < rows; row++) fitting += block[row]! >= least && block[row]! < tooLarge ? 1 : 0;
  if (wholes) for (let row = 0; row < rows; row++) fitting -= Math.trunc(block[row]!) === block[row]! ? 0 : 1;
  if (fitting === rows) return;
  const fits = (x: number): boolean => x >= least && x < tooLarge && (!wholes || Number.isSafeInteger(x));
  const at = block.subarray(0, rows).findIndex((x) => !fits(x));
  const x = block[at]!;
  const code: RefusalCode = Number.isFinite(x)
    ? x >= least && x < tooLarge
      ? "not-whole"
      : "out-of-range"
    : "not-a-number";
  const expected = wholes ? `a whole number of ${input.noun}` : `${input.noun} within its range`;
  const place = `${where}[${String(start + at)}]`;
  throw new QuantityError({ code, where: place, expected, received: described(x), remedy: input.meaning });
}

/** Where the numbers of one column come from, block by block. */
interface Source {
  readonly where: string;
  readonly input: Input<unknown>;
  readonly least: number;
  readonly tooLarge: number;
  readonly own: Float64Array;
  /** The numbers of the block now worked on: a view of a typed column, or `own` filled from any other. */
  block: Float64Array;
}

/** A formula made ready for lists of so many members. */
interface Program {
  readonly sources: ReadonlyMap<string, Source>;
  readonly root: Node;
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
 * @returns a function from columns to the column of answers, as long as the longest given
 * @throws QuantityError "wrong-kind" for a unit of another kind, "out-of-range" with the row for a number
 */
export function forColumns<I, D extends string>(
  calculation: Calculation<I, Quantity<D> | number>,
  units: Readonly<Partial<Record<keyof I & string, Unit<string>>>>,
  unit: Unit<D> | null,
): (columns: Columns<I>) => Float64Array {
  const declared = declarationOf("forColumns", calculation);
  const byField = units as Readonly<Record<string, Unit<string> | undefined>>;
  const where = (field: string): string => `forColumns(${declared.name}, { ${field} })`;
  const tree = plainTree(declared, "forColumns", byField, unit);
  const programs = new Map<string, Program>();
  const programFor = (names: readonly string[], sizes: ReadonlyMap<string, number>): Program => {
    const made = programs.get(names.join());
    if (made !== undefined) return made;
    const sources = new Map(names.map((name) => [name, sourceOf(name, declared.inputs, byField, where)]));
    const leaf = (name: string): Node => {
      const source = sources.get(name);
      return source === undefined ? { constant: Number.NaN } : { fill: () => source.block };
    };
    const program = { sources, root: nodeOf(writtenOut(tree, sizes), leaf) };
    programs.set(names.join(), program);
    return program;
  };
  return (columns) => {
    const given = readColumns(declared.inputs, columns, where);
    return answers(programFor([...given.columns.keys()], given.sizes), given);
  };
}

/** `counts[1]` is a member of the input `counts`. */
function fieldOf(name: string): string {
  return name.replace(/\[\d+\]$/u, "");
}

function sourceOf(
  name: string,
  inputs: Readonly<Record<string, Input<unknown>>>,
  units: Readonly<Record<string, Unit<string> | undefined>>,
  where: (field: string) => string,
): Source {
  const declared = inputs[fieldOf(name)];
  const input = declared?.member ?? declared;
  if (input === undefined) throw new RangeError(`no input ${name}`);
  const [least, tooLarge] = boundsOf(input, units[fieldOf(name)] ?? null);
  const own = new Float64Array(BLOCK);
  return { where: where(name), input, least, tooLarge, own, block: own };
}

function answers({ sources, root }: Program, { columns, rows }: Given): Float64Array {
  const out = new Float64Array(rows);
  for (let start = 0; start < rows; start += BLOCK) {
    const size = Math.min(BLOCK, rows - start);
    for (const [name, source] of sources) {
      source.block = blockOf(columns.get(name) ?? Number.NaN, source.own, start, size);
      check(source, source.block, start, size);
    }
    if ("constant" in root) out.fill(root.constant, start, start + size);
    else out.set(root.fill(size).subarray(0, size), start);
  }
  return out;
}

function blockOf(column: Column, own: Float64Array, start: number, size: number): Float64Array {
  if (column instanceof Float64Array) return column.subarray(start, start + size);
  if (typeof column === "number") return own.fill(column, 0, size);
  for (let row = 0; row < size; row++) own[row] = column[start + row] ?? Number.NaN;
  return own;
}
