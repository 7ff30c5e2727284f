import * as maths from "@thrum/maths";
import { inWords, isCalculation } from "@thrum/maths";
import type { AnyCalculation, Declared } from "@thrum/maths";
import { snakeCase } from "../names.js";

/** One parameter of a spreadsheet function. */
export interface Parameter {
  readonly name: string;
  /** The input it belongs to; null for the unit of the answer. */
  readonly field: string | null;
  readonly role: "value" | "list" | "unit" | "word";
  readonly dimensions: readonly string[];
  readonly help: string;
}

/** Every calculation of the handbook by the name of its spreadsheet function: WARP_LENGTH. */
export const functions: ReadonlyMap<string, AnyCalculation> = new Map(
  Object.entries<unknown>(maths).flatMap(([name, value]) =>
    isCalculation(value) ? [[snakeCase(name).toUpperCase(), value]] : [],
  ),
);

/** The parameters of a calculation, each quantity followed by the unit its numbers are in; the unit of the answer last. */
export function parametersOf({ inputs, result, resultIn }: Declared): readonly Parameter[] {
  const own = Object.entries(inputs).flatMap(([field, input]): readonly Parameter[] => {
    const name = snakeCase(field);
    const { what, member } = input;
    const dimensions = [input.dimension, ...(input.orDimension === undefined ? [] : [input.orDimension])];
    const base = { field, dimensions };
    if (what === "unit") return [{ ...base, name, role: "unit", help: `the unit, as text: ${input.meaning}` }];
    if (what === "word") return [{ ...base, name, role: "word", help: `${input.noun}: ${input.meaning}` }];
    const isList = what === "list";
    const value: Parameter = {
      ...base,
      name,
      role: isList ? "list" : "value",
      help: `${isList ? "a range, each " : ""}${input.noun}: ${input.meaning}`,
    };
    const hasUnit = (member ?? input).what === "quantity";
    const help = `the unit of ${inWords(field)}, as text`;
    return hasUnit ? [value, { ...base, name: `${name}_unit`, role: "unit", help }] : [value];
  });
  const counted = typeof resultIn === "string" && inputs[resultIn]?.what === "unit";
  if (result.what !== "quantity" || counted) return own;
  const help = "the unit the answer is wanted in, as text";
  return [...own, { name: "answer_unit", field: null, role: "unit", dimensions: [result.dimension], help }];
}
