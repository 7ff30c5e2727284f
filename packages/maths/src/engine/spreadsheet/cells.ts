import { CELL_DECIMALS } from "../numbers.js";
import { described } from "../quantity/index.js";
import type { Unit } from "../quantity/index.js";
import { refuse } from "../refusal.js";
import type { Place } from "../refusal.js";
import { treeText, withNames } from "../formula/index.js";
import type { Declared, Tree, Unary } from "../formula/index.js";

/**
 * Where an input stands: a cell, range or defined name, with the unit its numbers are in; for a unit input, the unit
 * itself.
 */
export type Cell = string | readonly [address: string, unit: Unit<string>] | Unit<string>;

const ADDRESS = /^\$?[A-Z]{1,3}\$?[1-9]\d{0,6}(?::\$?[A-Z]{1,3}\$?[1-9]\d{0,6})?$/u;
const DEFINED = /^[a-z][a-z0-9]*(?:[_.][a-z0-9]+)*$/u;
/** What a spreadsheet takes for a cell, in either of the two ways of writing one. */
const LIKE_A_CELL = /^(?:[a-z]{1,3}\d+|r\d+c\d*)$/u;
const SHORTEST = 3;
const LONGEST = 200;

/** Whether text can be the name of a cell: small letters and digits, no address in any program. */
export function isDefinedName(text: string): boolean {
  const given: unknown = text;
  if (typeof given !== "string") return false;
  return text.length >= SHORTEST && text.length <= LONGEST && DEFINED.test(text) && !LIKE_A_CELL.test(text);
}

const FUNCTIONS: Readonly<Record<Unary, (inside: string) => string>> = {
  "√": (inside) => `SQRT(${inside})`,
  Σ: (inside) => `SUMPRODUCT(${inside})`,
  // ROUNDUP and ROUNDDOWN go away from zero and towards it; INT always goes down.
  roundUp: (inside) => `-INT(-ROUND(${inside},${CELL_DECIMALS}))`,
  roundDown: (inside) => `INT(ROUND(${inside},${CELL_DECIMALS}))`,
  nearest: (inside) => `INT(ROUND(${inside},${CELL_DECIMALS})+0.5)`,
  // Not over a list: MAX would give the largest of all members.
  orNothing: (inside) => `MAX(0,${inside})`,
};

/** A tree as a cell writes it, its names put where they stand. */
export function cellText(tree: Tree, addresses: ReadonlyMap<string, string>): string {
  const placed = withNames(tree, (name) => ({ op: "name", name: addresses.get(name) ?? name }));
  return `=${treeText(placed, {
    number: (text) => text,
    name: (name) => name,
    unary: (op, inside) => FUNCTIONS[op](inside),
    operators: { "+": "+", "−": "-", "×": "*", "÷": "/" },
  })}`;
}

function refuseCell(where: Place, expected: string, received: unknown): never {
  const remedy = "Give a cell such as B2, a range such as B1:B3, or a defined name such as loom_waste, with its unit.";
  refuse("unreadable", where, expected, described(received), remedy);
}

/** An address that may stand in a formula, or its refusal. */
export function addressOf(where: Place, address: unknown, takesRange: boolean): string {
  const named = typeof address === "string" && isDefinedName(address);
  const stands =
    typeof address === "string" &&
    address.length <= LONGEST &&
    ADDRESS.test(address) &&
    (takesRange || !address.includes(":"));
  return named || stands ? address : refuseCell(where, takesRange ? "a cell or range" : "a cell", address);
}

/** The addresses and units of the inputs, as given for a formula. */
export function readCells(
  { inputs }: Declared,
  caller: string,
  cells: unknown,
): { readonly addresses: Map<string, string>; readonly units: Readonly<Record<string, unknown>> } {
  const addresses = new Map<string, string>();
  const units: Record<string, unknown> = {};
  const given = Object(cells) as Readonly<Record<string, unknown>>;
  for (const [field, cell] of Object.entries(given)) {
    if (!Object.hasOwn(inputs, field)) units[field] = cell;
    if (Array.isArray(cell)) units[field] = cell[1] as unknown;
  }
  for (const [field, { what }] of Object.entries(inputs)) {
    const cell = given[field];
    if (what === "unit") {
      units[field] = cell;
      continue;
    }
    const address: unknown = Array.isArray(cell) ? cell[0] : cell;
    addresses.set(field, addressOf([caller, field], address, what === "list"));
  }
  return { addresses, units };
}
