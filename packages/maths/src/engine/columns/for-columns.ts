import { described } from "../quantity/index.js";
import type { Quantity, Unit } from "../quantity/index.js";
import { QuantityError } from "../refusal.js";
import type { RefusalCode } from "../refusal.js";
import { declarationOf, plainTree } from "../formula/index.js";
import type { Calculation, Input } from "../formula/index.js";
import { BLOCK, nodeOf } from "./blocks.js";
import type { Node } from "./blocks.js";

/** A column of plain numbers, or one number for every row. */
export type Column = Float64Array | readonly number[] | number;

/** The least and the first too large number of an input, counted in the unit of its column. */
function boundsOf({ range }: Input<unknown>, unit: Unit<string> | null): readonly [least: number, tooLarge: number] {
  const [over, under] = unit?.scale ?? [1, 1];
  const least = range.above === 0 ? Number.MIN_VALUE : ((range.atLeast ?? -Infinity) * under) / over;
  return [least, ((range.below ?? Infinity) * under) / over];
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

/** One run over columns: where each input's numbers come from, block by block. */
interface Source {
  readonly where: string;
  readonly input: Input<unknown>;
  readonly least: number;
  readonly tooLarge: number;
  readonly own: Float64Array;
  /** The numbers of the block now worked on: a view of a typed column, or `own` filled from any other. */
  block: Float64Array;
}

/**
 * A calculation over whole columns of plain numbers: units are checked once, when this is called; ranges at every row.
 *
 * A column reckons in doubles, its roundings guarded at nine digits.
 *
 * @param calculation any calculation without a list among its inputs
 * @param units for each quantity the unit its column is in, for each unit input the unit; plain counts may be left out
 * @param unit the unit the answers are wanted in; null for an answer that is a plain number
 * @returns a function from columns to the column of answers, as long as the longest given
 * @throws QuantityError "wrong-kind" for a unit of another kind, "out-of-range" with the row for a number
 */
export function forColumns<I, D extends string>(
  calculation: Calculation<I, Quantity<D> | number>,
  units: Readonly<Partial<Record<keyof I & string, Unit<string>>>>,
  unit: Unit<D> | null,
): (columns: Readonly<Partial<Record<keyof I & string, Column>>>) => Float64Array {
  const declared = declarationOf("forColumns", calculation);
  const byField = units as Readonly<Record<string, Unit<string> | undefined>>;
  const where = (field: string): string => `forColumns(${declared.name}, { ${field} })`;
  const tree = plainTree(declared, "forColumns", byField, unit);
  const sources = new Map<string, Source>();
  for (const [field, input] of Object.entries(declared.inputs)) {
    if (input.what === "unit") continue;
    if (input.what === "list") {
      const remedy = "Call the calculation row by row.";
      throw new QuantityError({
        code: "wrong-kind",
        where: where(field),
        expected: "no list",
        received: "a list",
        remedy,
      });
    }
    const [least, tooLarge] = boundsOf(input, byField[field] ?? null);
    const own = new Float64Array(BLOCK);
    sources.set(field, { where: where(field), input, least, tooLarge, own, block: own });
  }
  const leaf = (name: string): Node => {
    const source = sources.get(name);
    return source === undefined ? { constant: Number.NaN } : { fill: () => source.block };
  };
  const root = nodeOf(tree, leaf);
  return (columns) => {
    const given = columns as Readonly<Record<string, Column | undefined>>;
    const rows = rowsOf(given, [...sources.keys()], where);
    const out = new Float64Array(rows);
    for (let start = 0; start < rows; start += BLOCK) {
      const size = Math.min(BLOCK, rows - start);
      for (const [field, source] of sources) {
        source.block = blockOf(given[field] ?? Number.NaN, source.own, start, size);
        check(source, source.block, start, size);
      }
      if ("constant" in root) out.fill(root.constant, start, start + size);
      else out.set(root.fill(size).subarray(0, size), start);
    }
    return out;
  };
}

function blockOf(column: Column, own: Float64Array, start: number, size: number): Float64Array {
  if (column instanceof Float64Array) return column.subarray(start, start + size);
  if (typeof column === "number") return own.fill(column, 0, size);
  for (let row = 0; row < size; row++) own[row] = column[start + row] ?? Number.NaN;
  return own;
}

function isColumn(column: unknown): column is Column {
  return typeof column === "number" || Array.isArray(column) || column instanceof Float64Array;
}

/** All columns are of one length; single numbers serve every row. */
function rowsOf(
  given: Readonly<Record<string, Column | undefined>>,
  fields: readonly string[],
  where: (field: string) => string,
): number {
  let rows: number | null = null;
  for (const field of fields) {
    const column = given[field];
    const length = typeof column === "number" || column === undefined ? null : column.length;
    if (isColumn(column) && (length === null || rows === null || rows === length)) {
      rows = length ?? rows;
      continue;
    }
    const expected = rows === null ? "a column of numbers" : `a column of ${String(rows)} numbers, as the others`;
    const code = column === undefined ? "missing" : "wrong-kind";
    throw new QuantityError({ code, where: where(field), expected, received: described(column), remedy: "" });
  }
  return rows ?? 1;
}
