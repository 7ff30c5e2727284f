import { powersOf } from "../quantity/index.js";
import type { Quantity, Unit } from "../quantity/index.js";
import {
  declarationOf,
  dimensionsOf,
  formulaStyle,
  namesIn,
  plainFormula,
  scaled,
  treeText,
  withNames,
} from "../formula/index.js";
import type { Calculation, Declared, Tree } from "../formula/index.js";
import { inWords } from "../working/index.js";
import { symbolFor, symbolOf } from "../working/words.js";
import { addressOf, cellText, readCells } from "./cells.js";
import type { Cell } from "./cells.js";

/** One line of a working in a sheet: a cell of its own, which the lines below it read. */
export interface SpreadsheetLine {
  /** As in the formula; `loomWasteConverted` for an input turned into the unit of work, `answer` for the last. */
  readonly name: string;
  /** The line as a reader says it. */
  readonly words: string;
  /** The formula of its cell. */
  readonly formula: string;
  /** The symbol of the unit its number is in; empty for a plain number. */
  readonly unit: string;
}

interface PlainLine {
  readonly name: string;
  readonly words: string;
  readonly tree: Tree;
  readonly unit: string;
}

/** Whether a tree is a whole list, which has no cell: the names outside every Σ are looked at. */
function isListed(tree: Tree, listed: ReadonlySet<string>): boolean {
  if (tree.op === "Σ" || tree.op === "number") return false;
  if (tree.op === "name") return listed.has(tree.name);
  return "of" in tree ? isListed(tree.of, listed) : isListed(tree.left, listed) || isListed(tree.right, listed);
}

/** The lines that have a cell; one that stands for a whole list is written into those that use it. */
function singleLines({ inputs, lines }: Declared): readonly { readonly name: string; readonly tree: Tree }[] {
  const listed = new Set(Object.keys(inputs).filter((field) => inputs[field]?.what === "list"));
  const inside = new Map<string, Tree>();
  return lines.flatMap(({ name, tree: written }) => {
    const tree = withNames(written, (used) => inside.get(used) ?? null);
    if (!isListed(tree, listed)) return [{ name, tree }];
    inside.set(name, tree);
    return [];
  });
}

function plainLines(
  declared: Declared,
  units: Readonly<Record<string, unknown>>,
  unit: Unit<string> | null,
): readonly PlainLine[] {
  const { frame, inFrame, answer, reads, countedIn } = plainFormula(declared, "spreadsheetLines", units, unit);
  const powers = dimensionsOf(declared);
  const words = (tree: Tree): string => treeText(tree, formulaStyle(inWords));
  const singles = singleLines(declared);
  const used = new Set(singles.flatMap(({ tree }) => namesIn(tree)));
  const converted = new Map<string, PlainLine>();
  for (const [field, { what, dimension }] of Object.entries(declared.inputs)) {
    const tree = inFrame({ op: "name", name: field });
    const isBare = powersOf(dimension).every((power) => power === 0);
    if (what !== "quantity" || isBare || tree.op === "name" || !used.has(field)) continue;
    const read = reads.get(field);
    if (read?.what !== "quantity") continue;
    const symbol = read.reckonedIn?.symbol ?? symbolFor(frame, read.unit);
    converted.set(field, { name: `${field}Converted`, words: words(tree), tree, unit: symbol });
  }
  const inCells = (tree: Tree): Tree => {
    const moved = withNames(tree, (name) => {
      const line = converted.get(name);
      return line === undefined ? null : { op: "name", name: line.name };
    });
    return inFrame(moved);
  };
  const last = singles.at(-1)?.name ?? "";
  const lastSymbol = (): string => {
    if (unit === null) return declared.result.noun;
    if (answer === null) return unit.symbol;
    const isBare = powersOf(unit.dimension).every((power) => power === 0);
    return isBare ? "" : (countedIn?.symbol ?? symbolFor(frame, unit));
  };
  const lines = singles.map(({ name, tree }) => ({
    name,
    words: words(tree),
    tree: inCells(tree),
    unit: name === last ? lastSymbol() : symbolOf(frame, powers.get(name) ?? [0, 0]),
  }));
  const end: Tree = { op: "name", name: last };
  const closing =
    answer === null || unit === null
      ? []
      : [{ name: "answer", words: words(scaled(end, answer)), tree: scaled(end, answer), unit: unit.symbol }];
  return [...converted.values(), ...lines, ...closing];
}

/**
 * The working of a calculation as cells: first the inputs turned into the units of work, then every line of the formula,
 * the answer last. Each formula reads the cells above it.
 *
 * @param calculation any calculation of the handbook
 * @param cells for each input its cell, range or defined name, with the unit of the numbers in it
 * @param unit the unit the answer is wanted in; null for an answer that is a plain number
 * @param place tells for the name of a line the cell or defined name where it will stand
 * @throws QuantityError "unreadable" for an address that is none, "wrong-kind" or "missing" for its unit
 */
export function spreadsheetLines<I, D extends string>(
  calculation: Calculation<I, Quantity<D> | number>,
  cells: Readonly<Record<keyof I & string, Cell>>,
  unit: Unit<D> | null,
  place: (name: string) => string,
): readonly SpreadsheetLine[] {
  const declared = declarationOf("spreadsheetLines", calculation);
  const { addresses, units } = readCells(declared, "spreadsheetLines", cells);
  const lines = plainLines(declared, units, unit);
  const all = new Map(addresses);
  for (const { name } of lines) all.set(name, addressOf(["spreadsheetLines", "place", name], place(name), false));
  return lines.map(({ name, words, tree, unit: symbol }) => ({
    name,
    words,
    formula: cellText(tree, all),
    unit: symbol,
  }));
}
