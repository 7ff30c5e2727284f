import { described } from "../quantity/index.js";
import type { Quantity, Unit } from "../quantity/index.js";
import { QuantityError } from "../refusal.js";
import type { RefusalCode } from "../refusal.js";
import { plainTree } from "../formula/index.js";
import type { Calculation, Input } from "../formula/index.js";
import { BLOCK, nodeOf } from "./blocks.js";
import type { Node } from "./blocks.js";

/** A column of plain numbers, or one number for every row. */
export type Column = Float64Array | readonly number[] | number;

type Checked = (block: Float64Array, start: number, rows: number) => void;

/** The bounds of an input, counted in the unit of its column. */
function boundsOf(
  input: Input<unknown>,
  unit: Unit<string> | null,
): readonly [atLeast: number, above: number, below: number] {
  const [over, under] = unit?.scale ?? [1, 1];
  const { atLeast, above, below } = input.range;
  const inUnit = (bound: number | null, open: number): number => (bound === null ? open : (bound * under) / over);
  return [inUnit(atLeast, -Number.MAX_VALUE), inUnit(above, -Infinity), inUnit(below, Infinity)];
}

function checkOf(where: string, input: Input<unknown>, unit: Unit<string> | null): Checked {
  const [atLeast, above, below] = boundsOf(input, unit);
  const wholes = input.what === "whole";
  return (block, start, rows) => {
    for (let row = 0; row < rows; row++) {
      const x = block[row]!;
      if (!(x >= atLeast && x < below && x > above && (!wholes || Math.trunc(x) === x))) {
        const code: RefusalCode = Number.isFinite(x)
          ? wholes && Math.trunc(x) !== x
            ? "not-whole"
            : "out-of-range"
          : "not-a-number";
        const at = `${where}[${String(start + row)}]`;
        throw new QuantityError({
          code,
          where: at,
          expected: input.noun,
          received: described(x),
          remedy: input.meaning,
        });
      }
    }
  };
}

/** One run over columns: where each input's numbers come from, block by block. */
interface Source {
  readonly field: string;
  readonly block: Float64Array;
  readonly check: Checked;
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
  const declared = calculation.declaration;
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
    const check = checkOf(where(field), input, byField[field] ?? null);
    sources.set(field, { field, block: new Float64Array(BLOCK), check });
  }
  const leaf = (name: string): Node => {
    const block = sources.get(name)?.block;
    return block === undefined ? { constant: Number.NaN } : { fill: () => block };
  };
  const root = nodeOf(tree, leaf);
  return (columns) => {
    const given = columns as Readonly<Record<string, Column | undefined>>;
    const rows = rowsOf(given, [...sources.keys()], where);
    const out = new Float64Array(rows);
    for (let start = 0; start < rows; start += BLOCK) {
      const size = Math.min(BLOCK, rows - start);
      for (const { field, block, check } of sources.values()) {
        fill(block, given[field] ?? Number.NaN, start, size);
        check(block, start, size);
      }
      if ("constant" in root) out.fill(root.constant, start, start + size);
      else out.set(root.fill(size).subarray(0, size), start);
    }
    return out;
  };
}

function fill(block: Float64Array, column: Column, start: number, size: number): void {
  if (typeof column === "number") block.fill(column, 0, size);
  else if (column instanceof Float64Array) block.set(column.subarray(start, start + size));
  else for (let row = 0; row < size; row++) block[row] = column[start + row] ?? Number.NaN;
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
