import type { Declared, Quantity, Unit } from "@thrum/maths";
import type { Parameter } from "./parameters.js";
import { unitFromText } from "./unit-from-text.js";

/** What a spreadsheet hands over: numbers, text, blanks, and ranges as rows of these. */
export type Value = number | string | boolean | null | undefined | readonly (readonly unknown[])[];

/** The input of a calculation, and the unit its answer is wanted in. */
export interface FunctionInput {
  readonly input: Readonly<Record<string, unknown>>;
  readonly unit: Unit<string> | null;
}

const ERRORS = ["#N/A", "#DIV/0!", "#VALUE!", "#REF!", "#NAME?", "#NUM!", "#NULL!", "#ERROR!"];

/** Whether this is the error of another cell, which passes through as itself. */
export function isCellError(value: unknown): value is string {
  return typeof value === "string" && ERRORS.includes(value);
}

/** Whether a cell is empty. */
export function isBlank(value: unknown): boolean {
  return value === "" || value === null || value === undefined;
}

function numberAt(where: string, value: unknown): number {
  if (typeof value === "number" && Number.isFinite(value)) return value;
  const received = typeof value === "string" ? `the text "${value.slice(0, 40)}"` : String(value).slice(0, 40);
  throw new Error(
    `${where}: expected a number, received ${received}. Write the number alone; its unit has its own place.`,
  );
}

function listAt(where: string, value: unknown, mayBeEmpty: boolean): readonly number[] {
  const members = (Array.isArray(value) ? value.flat() : [value]).filter((one) => !isBlank(one)) as readonly unknown[];
  if (members.length === 0 && !mayBeEmpty) {
    throw new Error(`${where}: expected a range of one number or more, received an empty one.`);
  }
  return members.map((one, at) => numberAt(`${where}, number ${String(at + 1)}`, one));
}

/** Makes the input from values that stand in single cells, but for lists, which are ranges. */
export function inputFrom(
  name: string,
  { inputs }: Declared,
  parameters: readonly Parameter[],
  values: readonly unknown[],
): FunctionInput {
  const input: Record<string, unknown> = {};
  let unit: Unit<string> | null = null;
  for (const [at, { name: parameter, field, role, dimensions }] of parameters.entries()) {
    const where = `${name}, ${parameter}`;
    const value = values[at];
    if (role === "word") input[field ?? ""] = value;
    else if (role === "value") input[field ?? ""] = numberAt(where, value);
    else if (role === "list") input[field ?? ""] = listAt(where, value, inputs[field ?? ""]?.mayBeEmpty ?? false);
    else {
      const named = unitFromText(where, dimensions, value);
      if (field === null) unit = named;
      else if (inputs[field]?.what === "unit") unit = input[field] = named;
      else input[field] = withUnit(input[field], named);
    }
  }
  return { input, unit };
}

function withUnit(amount: unknown, unit: Unit<string>): Quantity<string> | readonly Quantity<string>[] {
  return Array.isArray(amount) ? (amount as readonly number[]).map((one) => unit(one)) : unit(amount as number);
}
