import type { Declared, Unit } from "@thrum/maths";
import type { AnyCalculation } from "../calculation/given.js";
import type { Amount } from "./known.js";

/** A calculation of the plan as the workbook does it again. */
export interface Sum {
  readonly what: "sum";
  /** Of the cell of its answer. */
  readonly name: string;
  readonly label: string;
  readonly calculation: AnyCalculation;
  readonly input: Readonly<Record<string, unknown>>;
  /** Inputs that stand under another name than their own. */
  readonly reads: Readonly<Record<string, string>>;
  /** The plan's own, in the unit it is shown in. */
  readonly answer: Amount;
}

/** What the plan does between two calculations, as a formula that reads other cells by name. */
export interface Between {
  readonly what: "between";
  readonly name: string;
  readonly label: string;
  readonly words: string;
  readonly formula: string;
  /** Of a plain number. */
  readonly noun: string;
  readonly answer: Amount;
}

/** An amount of the job that no calculation takes by itself. */
export interface Stated {
  readonly what: "stated";
  readonly name: string;
  readonly label: string;
  readonly input: Declared["inputs"][string];
  readonly value: Amount;
}

export type Item = Sum | Between | Stated;

/** Sums that belong together, in the order of the work. */
export interface Group {
  readonly heading: string;
  readonly items: readonly Item[];
}

/** The factor that turns numbers in one unit into numbers in another, as a formula writes it. */
export function turned(name: string, from: Unit<string>, to: Unit<string>): string {
  const [over, under] = [BigInt(from.scale[0]) * BigInt(to.scale[1]), BigInt(from.scale[1]) * BigInt(to.scale[0])];
  return over === under ? name : `${name}*${String(over)}/${String(under)}`;
}
