import type { Cell, Declared, Unit } from "@thrum/maths";
import type { PlanSum } from "@thrum/plan";

/** An input as a formula declares it. */
export type Input = Declared["inputs"][string];

/** A cell that a reader may change: a key of the job, or what was counted in a list of it. */
export interface GivenCell {
  readonly name: string;
  readonly label: string;
  readonly value: number;
  readonly unit: Unit<string> | null;
  /** What it may be, by the first formula that reads it. */
  readonly input: Input | null;
  /** Whether no key changes it. */
  readonly isFixed: boolean;
}

/** A list as a range, its members side by side in one unit. */
export interface ListRow {
  readonly name: string;
  readonly label: string;
  readonly members: readonly { readonly formula: string | null; readonly now: number }[];
}

/** The cell of a figure. */
export interface FigureCell {
  readonly name: string;
  readonly sum: PlanSum;
  readonly unit: Unit<string> | null;
  readonly now: number;
  /** Null where it was counted: then it may be changed. */
  readonly formula: string | null;
  /** What its formula reads, for the sheet of workings. */
  readonly cells: Readonly<Record<string, Cell>>;
}

/** Every amount of a plan with its cell, the lists and what a reader may change. */
export interface Ledger {
  readonly figures: ReadonlyMap<PlanSum, FigureCell>;
  readonly givens: readonly GivenCell[];
  readonly lists: readonly ListRow[];
  /** Names cells of the workbook, each once. */
  readonly nameOf: (...parts: readonly (string | number)[]) => string;
}

/** A cell with what it holds. */
export interface Held {
  readonly name: string;
  readonly unit: Unit<string> | null;
  readonly now: number;
}

/** Where a formula finds it. */
export function placed({ name, unit }: Held): Cell {
  return unit === null ? name : [name, unit];
}

/** How a row is called in a name: `yarn1`. */
export function rowPrefix(group: string, at: number): string {
  return `${group}${String(at + 1)}`;
}
