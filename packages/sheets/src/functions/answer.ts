import type { AnyCalculation } from "@thrum/maths";
import { functions, parametersOf } from "./parameters.js";
import type { Parameter } from "./parameters.js";
import { inputFrom, isBlank, isCellError } from "./input-from.js";
import type { FunctionInput, Value } from "./input-from.js";
import { nearNames } from "./near-names.js";

/** A function's answer: a number, nothing for a blank, the error of another cell, or a range of these. */
export type Answer = number | string;

/** The calculation a name stands for, or an error with the near names. */
export function calculationNamed(name: unknown): AnyCalculation {
  const found = functions.get(String(name).trim().toUpperCase());
  if (found !== undefined) return found;
  const near = nearNames(String(name).slice(0, 60).toUpperCase(), [...functions.keys()]);
  throw new Error(`There is no function ${String(name).slice(0, 60)}. Near are ${near.join(", ")}.`);
}

interface Shape {
  readonly rows: number;
  readonly columns: number;
}

/** The shape all ranges agree on: each has one row or all of them, one column or all of them. */
function shapeOf(name: string, parameters: readonly Parameter[], values: readonly unknown[]): Shape | null {
  let shape = null as Shape | null;
  let first = "";
  for (const [at, { name: parameter, role }] of parameters.entries()) {
    const value = values[at];
    if (!Array.isArray(value) || role === "list") continue;
    if (role !== "value") throw new Error(`${name}, ${parameter}: expected one cell, received a range.`);
    const [rows, columns] = [value.length, (value[0] as readonly unknown[] | undefined)?.length ?? 0];
    const fits = (own: number, other: number): boolean => own === other || own === 1 || other === 1;
    if (rows === 0 || columns === 0 || (shape !== null && !(fits(rows, shape.rows) && fits(columns, shape.columns)))) {
      const other = shape === null ? "" : `; ${first} has ${String(shape.rows)} × ${String(shape.columns)}`;
      throw new Error(`${name}, ${parameter}: a range of ${String(rows)} × ${String(columns)} does not fit${other}.`);
    }
    if (shape === null) first = parameter;
    shape = { rows: Math.max(rows, shape?.rows ?? 1), columns: Math.max(columns, shape?.columns ?? 1) };
  }
  return shape;
}

function valueAt(value: unknown, row: number, column: number): unknown {
  const rows = value as readonly (readonly unknown[])[];
  const cells = rows[rows.length === 1 ? 0 : row] ?? [];
  return cells[cells.length === 1 ? 0 : column];
}

/** What stands instead of a sum where a cell is empty or in error; null where the sum can be done. */
function passedOn(parameters: readonly Parameter[], values: readonly unknown[]): string | null {
  const given = parameters.flatMap(({ role }, at): readonly unknown[] => {
    const value = values[at];
    return role === "list" && Array.isArray(value) ? (value.flat() as readonly unknown[]) : [value];
  });
  const error = given.find(isCellError);
  if (error !== undefined) return error;
  return parameters.some(({ role }, at) => role === "value" && isBlank(values[at])) ? "" : null;
}

/** The sum of one row of values, read for a function. */
export function readFor(name: string, calculation: AnyCalculation, values: readonly unknown[]): FunctionInput {
  return inputFrom(name, calculation.declaration, parametersOf(calculation.declaration), values);
}

/**
 * What a spreadsheet function gives: one answer for single cells, a range of the same shape for ranges.
 *
 * @throws Error with the name of the argument, and the row and column where it is one of a range
 */
export function answer(name: string, values: readonly Value[]): Answer | readonly (readonly Answer[])[] {
  const calculation = calculationNamed(name);
  const parameters = parametersOf(calculation.declaration);
  if (values.length > parameters.length)
    throw new Error(`${name} takes ${String(parameters.length)} arguments, received ${String(values.length)}.`);
  const one = (own: readonly unknown[]): Answer => {
    const passed = passedOn(parameters, own);
    if (passed !== null) return passed;
    const { input, unit } = readFor(name, calculation, own);
    const found = calculation(input);
    return typeof found === "number" || unit === null ? Number(found) : found.in(unit);
  };
  const shape = shapeOf(name, parameters, values);
  if (shape === null) return one(values);
  return Array.from({ length: shape.rows }, (_row, row) =>
    Array.from({ length: shape.columns }, (_column, column) => {
      const own = parameters.map(({ role }, at) =>
        role === "value" && Array.isArray(values[at]) ? valueAt(values[at], row, column) : values[at],
      );
      try {
        return one(own);
      } catch (error) {
        throw new Error(`Row ${String(row + 1)}, column ${String(column + 1)}: ${(error as Error).message}`, {
          cause: error,
        });
      }
    }),
  );
}
