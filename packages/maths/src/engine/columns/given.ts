import { described } from "../quantity/index.js";
import { missingOr, refuse } from "../refusal.js";
import type { Place } from "../refusal.js";
import type { Input } from "../formula/index.js";

/** A typed array of numbers; those of big integers are none. */
type NumberArray =
  | Float64Array
  | Float32Array
  | Int32Array
  | Uint32Array
  | Int16Array
  | Uint16Array
  | Int8Array
  | Uint8Array
  | Uint8ClampedArray;

/** A column of plain numbers, or one number for every row. */
export type Column = NumberArray | readonly number[] | number;

/** The columns by name, the members of a list numbered; how many each list has; and the rows of all. */
export interface Given {
  readonly columns: ReadonlyMap<string, Column>;
  readonly sizes: ReadonlyMap<string, number>;
  readonly rows: number;
}

function wrongKind(where: Place, expected: string, given: unknown): never {
  refuse(missingOr(given, "wrong-kind"), where, expected, described(given));
}

export function isNumberArray(column: unknown): column is NumberArray {
  if (!ArrayBuffer.isView(column) || column instanceof DataView) return false;
  return !(column instanceof BigInt64Array || column instanceof BigUint64Array);
}

function isColumn(column: unknown): column is Column {
  return typeof column === "number" || Array.isArray(column) || isNumberArray(column);
}

function flattened(
  inputs: Readonly<Record<string, Input<unknown>>>,
  given: Readonly<Record<string, unknown>>,
  where: (field: string) => Place,
): {
  readonly named: readonly (readonly [name: string, column: unknown])[];
  readonly sizes: ReadonlyMap<string, number>;
} {
  const sizes = new Map<string, number>();
  const named = Object.entries(inputs).flatMap(([field, { what, mayBeEmpty }]): (readonly [string, unknown])[] => {
    const one = given[field];
    if (what === "unit") return [];
    if (what !== "list") return [[field, one]];
    if (!Array.isArray(one) || (one.length === 0 && !mayBeEmpty)) {
      return wrongKind(where(field), mayBeEmpty ? "a list of columns" : "a list of columns, one or more", one);
    }
    sizes.set(field, one.length);
    return one.map((member: unknown, at) => [`${field}[${String(at)}]`, member] as const);
  });
  return { named, sizes };
}

/** Reads the columns given: all of one length, single numbers serving every row, nothing missing or unknown. */
export function readColumns(
  inputs: Readonly<Record<string, Input<unknown>>>,
  given: Readonly<Record<string, unknown>>,
  where: (field: string) => Place,
): Given {
  if (typeof (given as unknown) !== "object" || (given as unknown) === null) {
    wrongKind(where("columns"), "an object with a column for each input", given);
  }
  for (const field of Object.keys(given)) {
    if (Object.hasOwn(inputs, field)) continue;
    const [candidates, received] = [Object.keys(inputs), described(given[field])];
    const remedy = "Leave the field out, or correct its name.";
    const expected = `only ${candidates.join(", ")}`;
    refuse("unknown-field", where(field), expected, received, remedy, { candidates });
  }
  const { named, sizes } = flattened(inputs, given, where);
  const columns = new Map<string, Column>();
  let rows: number | null = null;
  for (const [name, column] of named) {
    const length = isColumn(column) && typeof column !== "number" ? column.length : null;
    if (!isColumn(column) || (length !== null && rows !== null && rows !== length)) {
      const expected = rows === null ? "a column of numbers" : `a column of ${String(rows)} numbers, as the others`;
      return wrongKind(where(name), expected, column);
    }
    rows = length ?? rows;
    columns.set(name, column);
  }
  return { columns, sizes, rows: rows ?? 1 };
}
