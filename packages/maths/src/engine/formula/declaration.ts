import type { Quantity, Unit } from "../quantity/index.js";
import type { Input } from "./input.js";
import type { Line } from "./tree.js";

/** A book, paper or page; its text is cited by `key`. */
export interface Source {
  readonly key: string;
  readonly author: string;
  readonly title: string;
  readonly year: string;
  readonly place: string;
}

/** A slip of the trade that is no small change of the formula: the lines it changes, and a sentence about the sum. */
export interface Slip {
  readonly says: string;
  readonly instead: string;
}

/** A formula in the words of the handbook. */
export interface Declaration<I, R> {
  readonly name: string;
  readonly inputs: { readonly [K in keyof I]: Input<I[K]> };
  readonly formula: string;
  /** The least that a line between may come to, where less would make no sense: no fewer repeats than none. */
  readonly atLeast?: Readonly<Record<string, number>>;
  readonly result: Input<R>;
  /** The input whose unit the result takes, or the units to choose from; a length or mass needs neither. */
  readonly resultIn?: (keyof I & string) | readonly Unit<string>[];
  readonly source: Source;
  /** The input in which a wrong answer is told: "finished length about 1/4 in short". */
  readonly toldIn?: keyof I & string;
  /** Which way a hand rounds the answer to what is cut, wound, bought or asked for; left out where it rounds to the nearest. */
  readonly forUse?: "up" | "down";
  readonly slips?: readonly Slip[];
}

/** A declaration with its formula read. */
export interface Declared {
  readonly name: string;
  readonly inputs: Readonly<Record<string, Input<unknown>>>;
  readonly formula: string;
  readonly lines: readonly Line[];
  readonly atLeast: Readonly<Record<string, number>>;
  readonly result: Input<unknown>;
  readonly resultIn: string | readonly Unit<string>[] | null;
  readonly source: Source;
  readonly toldIn: string | null;
  readonly forUse: "up" | "down" | null;
  readonly slips: readonly Slip[];
}

/** A formula one can call; its declaration comes with it. */
export interface Calculation<I, R> {
  (input: I): R;
  readonly declaration: Declared;
}

/** A calculation that any input can be handed to: it refuses what does not fit when it is called, not before. */
export type AnyCalculation = Calculation<Readonly<Record<string, unknown>>, Quantity<string> | number>;

/** A calculation behind a report, to be explained on demand. */
export interface ReportStep<I> {
  readonly calculation: Calculation<I, unknown>;
  readonly input: I;
}
