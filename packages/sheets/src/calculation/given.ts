import { inWords, isQuantity, isUnit, unitOf } from "@thrum/maths";
import type { Cell, Declared, Unit } from "@thrum/maths";
import { snakeCase } from "../names.js";
import { isAmount, unitOrNone } from "./amounts.js";
import type { Amount } from "./amounts.js";

type Input = Declared["inputs"][string];

/** One cell that a reader may change. */
export interface GivenCell {
  readonly label: string;
  readonly value: number;
  readonly unit: Unit<string> | null;
  readonly input: Input;
}

/** One input with its cells: as many as the list has members, else one; none for a unit, which is fixed. */
export interface Given {
  readonly field: string;
  readonly name: string;
  readonly cells: readonly GivenCell[];
  /** The unit that the answer is counted in, where the input is one. */
  readonly fixed: Unit<string> | null;
}

/** What stands in for a list of none, as no range is empty: nothing, in the unit of another amount of the kind. */
function nothingIn({ dimension }: Input, input: Readonly<Record<string, unknown>>): Amount {
  const alike = Object.values(input)
    .flat()
    .find((one) => isQuantity(one) && one.dimension === dimension);
  return isQuantity(alike) ? unitOf(alike)(0) : 0;
}

/** The inputs of a calculation as cells, each list in the unit of its first member. */
export function givenOf(declared: Declared, input: Readonly<Record<string, unknown>>): readonly Given[] {
  return Object.entries(declared.inputs).map(([field, declaredInput]) => {
    const value = input[field];
    const base = { field, name: snakeCase(field) };
    if (isUnit(value)) return { ...base, cells: [], fixed: value };
    const given = [value].flat().filter(isAmount);
    const members = given.length === 0 ? [nothingIn(declaredInput, input)] : given;
    const unit = members[0] === undefined ? null : unitOrNone(members[0]);
    const own = declaredInput.member ?? declaredInput;
    const cells = members.map((member, at) => ({
      label: inWords(field) + (declaredInput.what === "list" ? ` ${String(at + 1)}` : ""),
      value: typeof member === "number" || unit === null ? Number(member) : member.in(unit),
      unit,
      input: own,
    }));
    return { ...base, cells, fixed: null };
  });
}

/** Where `spreadsheetLines` finds the inputs. */
export function namedCells(given: readonly Given[]): Readonly<Record<string, Cell>> {
  return Object.fromEntries(
    given.map(({ field, name, cells, fixed }): [string, Cell] => {
      const unit = cells[0]?.unit ?? null;
      return [field, fixed ?? (unit === null ? name : [name, unit])];
    }),
  );
}
