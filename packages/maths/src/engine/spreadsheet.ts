import { described } from "./quantity/index.js";
import type { Quantity, Unit } from "./quantity/index.js";
import { QuantityError } from "./refusal.js";
import { declarationOf, plainTree, treeText, withNames } from "./formula/index.js";
import type { Calculation, Unary } from "./formula/index.js";

/** Where an input stands: a cell or range, with the unit its numbers are in; for a unit input, the unit itself. */
export type Cell = string | readonly [address: string, unit: Unit<string>] | Unit<string>;

const ADDRESS = /^\$?[A-Z]{1,3}\$?[1-9]\d{0,6}(?::\$?[A-Z]{1,3}\$?[1-9]\d{0,6})?$/u;
const FUNCTIONS: Readonly<Record<Unary, (inside: string) => string>> = {
  "√": (inside) => `SQRT(${inside})`,
  Σ: (inside) => `SUMPRODUCT(${inside})`,
  // ROUNDUP and ROUNDDOWN go away from zero and towards it; INT always goes down.
  roundUp: (inside) => `-INT(-ROUND(${inside},9))`,
  roundDown: (inside) => `INT(ROUND(${inside},9))`,
  nearest: (inside) => `INT(ROUND(${inside},9)+0.5)`,
};

function refuse(where: string, expected: string, received: unknown): never {
  const remedy = "Give a cell such as B2, or a range such as B1:B3, with its unit.";
  throw new QuantityError({ code: "unreadable", where, expected, received: described(received), remedy });
}

/**
 * The formula of a calculation for a spreadsheet cell, in built-in functions only.
 *
 * A sheet reckons in doubles: roundings are guarded at nine decimals, and no cell checks the range of its inputs.
 *
 * @param calculation any calculation of the handbook
 * @param cells for each input its cell, with the unit of the numbers in it
 * @param unit the unit the answer is wanted in; null for an answer that is a plain number
 * @throws QuantityError "unreadable" for an address that is none, "wrong-kind" or "missing" for its unit
 */
export function spreadsheetFormula<I, D extends string>(
  calculation: Calculation<I, Quantity<D> | number>,
  cells: Readonly<Record<keyof I & string, Cell>>,
  unit: Unit<D> | null,
): string {
  const declared = declarationOf("spreadsheetFormula", calculation);
  const addresses = new Map<string, string>();
  const units: Record<string, unknown> = {};
  const given = Object(cells) as Readonly<Record<string, unknown>>;
  for (const [field, cell] of Object.entries(given)) {
    if (!Object.hasOwn(declared.inputs, field)) units[field] = cell;
    if (Array.isArray(cell)) units[field] = cell[1] as unknown;
  }
  for (const [field, { what }] of Object.entries(declared.inputs)) {
    const where = `spreadsheetFormula(${declared.name}, { ${field} })`;
    const cell = given[field];
    if (what === "unit") {
      units[field] = cell;
      continue;
    }
    const address: unknown = Array.isArray(cell) ? cell[0] : cell;
    const fits = typeof address === "string" && ADDRESS.test(address) && (what === "list" || !address.includes(":"));
    addresses.set(field, fits ? address : refuse(where, what === "list" ? "a cell or range" : "a cell", address));
  }
  const tree = plainTree(declared, "spreadsheetFormula", units, unit);
  const placed = withNames(tree, (name) => ({ op: "name", name: addresses.get(name) ?? name }));
  return `=${treeText(placed, {
    number: (text) => text,
    name: (name) => name,
    unary: (op, inside) => FUNCTIONS[op](inside),
    operators: { "+": "+", "−": "-", "×": "*", "÷": "/" },
  })}`;
}
