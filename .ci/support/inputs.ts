import fc from "fast-check";
import * as maths from "@thrum/maths";
import type { Calculation, Declared, Quantity, Unit } from "@thrum/maths";

export { unitOf } from "@thrum/maths";

type Input = Declared["inputs"][string];
type AnyCalculation = Calculation<Record<string, unknown>, unknown>;

/** Every calculation the package exports, by name. */
export const calculations: readonly (readonly [name: string, calculation: AnyCalculation])[] = Object.entries(maths)
  .filter(([, value]) => typeof value === "function" && "declaration" in value)
  .map(([name, value]) => [name, value as unknown as AnyCalculation]);

/** Every unit the package exports. */
export const allUnits = [...Object.values(maths), maths.currency("EUR")].filter(
  (value) => typeof value === "function" && "scale" in value,
) as unknown as readonly Unit<string>[];

/** The units of a dimension. */
export function unitsOf(dimension: string): readonly Unit<string>[] {
  return allUnits.filter((unit) => unit.dimension === dimension);
}

const sixteenths = fc.integer({ min: 1, max: 4000 }).map((n) => n / 16);

/** Any valid value for an input, made from its declaration; a list has so many members. */
export function validFor(input: Input, members = 3): fc.Arbitrary<unknown> {
  if (input.what === "whole") return fc.integer({ min: input.range.atLeast ?? 0, max: 900 });
  if (input.what === "number") return sixteenths;
  if (input.what === "word") return fc.constantFrom(...(input.words ?? []));
  if (input.what === "unit") return fc.constantFrom(...unitsOf(input.dimension));
  if (input.what === "list" && input.member !== null)
    return fc.array(validFor(input.member), { minLength: members, maxLength: members });
  const isPart = input.range.below === 1 || input.range.atMost === 1;
  const amounts = isPart ? fc.integer({ min: input.range.above === 0 ? 1 : 0, max: 95 }) : sixteenths;
  return fc.tuple(fc.constantFrom(...unitsOf(input.dimension)), amounts).map(([unit, amount]) => unit(amount));
}

/** The fewest members that the lists of a calculation can have together. */
function fewest({ inputs }: Declared): number {
  return Object.values(inputs).every(({ what, mayBeEmpty }) => what !== "list" || mayBeEmpty) ? 0 : 1;
}

/** Any valid input of a calculation, its lists of one length. */
export function validInput(
  { declaration }: AnyCalculation,
  least: number = fewest(declaration),
): fc.Arbitrary<Record<string, unknown>> {
  return fc.integer({ min: least, max: 5 }).chain((members) => {
    const fields = Object.entries(declaration.inputs).map(
      ([field, input]) => [field, validFor(input, members)] as const,
    );
    return fc.record(Object.fromEntries(fields));
  });
}

/** An input as one row of plain numbers, with the unit of each. */
export function plainRow(
  input: Readonly<Record<string, unknown>>,
  { inputs }: Declared,
): {
  readonly units: Record<string, Unit<string>>;
  readonly columns: Record<string, number | number[]>;
} {
  const units: Record<string, Unit<string>> = {};
  const columns: Record<string, number | number[]> = {};
  for (const [field, value] of Object.entries(input)) {
    const members = (Array.isArray(value) ? value : [value]) as readonly unknown[];
    const [one] = members;
    if (typeof one === "function") units[field] = one as Unit<string>;
    if (typeof one === "object") units[field] = maths.unitOf(one as Quantity<string>);
    const { member } = inputs[field] ?? {};
    const [any] = one === undefined && member?.what === "quantity" ? unitsOf(member.dimension) : [];
    if (any !== undefined) units[field] = any;
    const unit = units[field];
    const numbers = members.map((member) =>
      unit && typeof member === "object" ? (member as Quantity<string>).in(unit) : (member as number),
    );
    if (typeof one !== "function") columns[field] = Array.isArray(value) ? numbers : (numbers[0] ?? Number.NaN);
  }
  return { units, columns };
}
