/** Values an input takes in turn, in the unit named as the package exports it; percentages come to a sum as parts of one. */
export type Given<V> = readonly [unit: string | null, values: readonly V[]];

/** A way to go wrong: its family, what was done, and the plain sum. */
export type WrongMethod<P> = readonly [family: Family, done: string, sum: (plain: P) => number];

export type Family =
  | "percentage the wrong way"
  | "percentage left out"
  | "several percentages"
  | "part, rest or base"
  | "unit of length or mass"
  | "trade constant"
  | "factor left out or turned over"
  | "term left out or wrong"
  | "reach"
  | "name for name"
  | "list"
  | "root or square"
  | "rounding or one off"
  | "a line for the answer"
  | "answer halved, doubled or turned over";

/** One sum of the corpus: its question, its right answer and its wrong methods, all on plain numbers. */
export interface Sum {
  readonly formula: string;
  /** The unit the answer is asked in, as the package exports it; null for a bare number. */
  readonly asked: string | null;
  /** Counted answers are whole numbers. */
  readonly whole: boolean;
  readonly inputs: Readonly<Record<string, Given<number | readonly number[]>>>;
  readonly right: (plain: Plain) => number;
  readonly wrong: readonly WrongMethod<Plain>[];
}

export type Plain = Readonly<Record<string, never>>;

type Numbers<I> = {
  readonly [K in keyof I]: I[K] extends Given<infer V>
    ? V extends readonly number[]
      ? readonly number[]
      : number
    : never;
};

/** A sum whose plain numbers are typed by its inputs. */
export function sum<I extends Readonly<Record<string, Given<number> | Given<readonly number[]>>>>(
  formula: string,
  asked: string | null,
  inputs: I,
  right: (plain: Numbers<I>) => number,
  wrong: readonly WrongMethod<Numbers<I>>[],
  whole = false,
): Sum {
  return { formula, asked, whole, inputs, right, wrong } as unknown as Sum;
}

export const total = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);
export const mean = (numbers: readonly number[]): number => total(numbers) / numbers.length;
export const products = (a: readonly number[], b: readonly number[]): number =>
  total(a.map((one, at) => one * (b[at] ?? Number.NaN)));
export const quotients = (a: readonly number[], b: readonly number[]): number =>
  total(a.map((one, at) => one / (b[at] ?? Number.NaN)));
export const inverses = (a: readonly number[]): number => total(a.map((one) => 1 / one));
