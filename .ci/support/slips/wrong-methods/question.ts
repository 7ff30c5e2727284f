import * as maths from "@thrum/maths";
import type { Calculation, Unit } from "@thrum/maths";
import type { Plain, Sum } from "./sum.js";

type Numbers = Readonly<Record<string, number | readonly number[]>>;
type AnyCalculation = Calculation<Readonly<Record<string, unknown>>, never>;

/** One set of inputs of a sum: as plain numbers, and as the package wants them. */
export interface Question {
  readonly plain: Plain;
  readonly numbers: Numbers;
  readonly input: Readonly<Record<string, unknown>>;
}

const exported = maths as unknown as Readonly<Record<string, unknown>>;

export function unitNamed(name: string | null): Unit<string> | null {
  if (name === null) return null;
  return name === "EUR" ? maths.currency("EUR") : (exported[name] as Unit<string>);
}

export function calculationOf({ formula }: Sum): AnyCalculation {
  return exported[formula] as AnyCalculation;
}

/** The so manieth inputs of a sum; its lists of values are gone through in turn. */
export function questionOf(sum: Sum, turn: number): Question {
  const numbers: Record<string, number | readonly number[]> = {};
  const input: Record<string, unknown> = {};
  for (const [name, [unitName, values]] of Object.entries(sum.inputs)) {
    const value = values[turn % values.length] ?? Number.NaN;
    const unit = unitNamed(unitName);
    const given = (one: number): unknown => (unit === null ? one : unit(String(one)));
    const isPercent = unitName?.startsWith("percent") === true;
    const plain = (one: number): number => (isPercent ? one / 100 : one);
    numbers[name] = typeof value === "number" ? plain(value) : value.map(plain);
    input[name] = typeof value === "number" ? given(value) : value.map(given);
  }
  for (const [name, { what }] of Object.entries(calculationOf(sum).declaration.inputs))
    if (what === "unit") input[name] = unitNamed(sum.asked);
  return { plain: numbers as unknown as Plain, numbers, input };
}
