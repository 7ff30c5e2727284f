import * as maths from "@thrum/maths";
import type { Calculation, Declared, Quantity } from "@thrum/maths";
import { inWords } from "@thrum/maths";

/** A calculation that any input can be handed to. */
export type AnyCalculation = Calculation<Readonly<Record<string, unknown>>, Quantity<string> | number>;

/** One parameter of a spreadsheet function. */
export interface Parameter {
  readonly name: string;
  /** The input it belongs to; null for the unit of the answer. */
  readonly field: string | null;
  readonly role: "value" | "list" | "unit" | "word";
  readonly dimensions: readonly string[];
  readonly help: string;
}

/** The name of the spreadsheet function of a calculation: WARP_LENGTH. */
function functionName(name: string): string {
  return name.replace(/[A-Z]/gu, (letter) => `_${letter}`).toUpperCase();
}

/** Every calculation of the handbook by the name of its spreadsheet function. */
export const functions: ReadonlyMap<string, AnyCalculation> = new Map(
  (Object.entries(maths) as readonly (readonly [string, unknown])[])
    .filter(([, value]) => typeof value === "function" && "declaration" in value)
    .map(([name, value]) => [functionName(name), value as AnyCalculation]),
);

function snake(name: string): string {
  return name.replace(/[A-Z]/gu, (letter) => `_${letter.toLowerCase()}`);
}

/** The parameters of a calculation, each quantity followed by the unit its numbers are in; the unit of the answer last. */
export function parametersOf({ inputs, result, resultIn }: Declared): readonly Parameter[] {
  const own = Object.entries(inputs).flatMap(([field, input]): readonly Parameter[] => {
    const name = snake(field);
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
