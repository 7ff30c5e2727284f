import type { Kind, Quantity, Unit } from "../quantity/index.js";

/** What may stand at an input. Bounds of a percentage are fractions: a loss is below 1. */
export interface Range {
  readonly atLeast: number | null;
  readonly above: number | null;
  readonly below: number | null;
  readonly atMost?: number;
}

/** One input of a formula: its kind, its meaning and its range. */
export interface Input<T> {
  readonly what: "quantity" | "whole" | "number" | "unit" | "list" | "word";
  readonly dimension: string;
  /** A second kind that may stand there too, as a yarn count is direct or indirect. */
  readonly orDimension?: string;
  /** The words to choose from, where the input is one. */
  readonly words?: readonly string[];
  /** As a sentence wants it: "a length", "pieces". */
  readonly noun: string;
  readonly meaning: string;
  /** Something that may stand there, as one writes it in a program: "inches(21)". */
  readonly example: string;
  /** Of a percentage: what it is taken of, as it stands behind the number on a sheet: "of what was there before". */
  readonly base?: string;
  /** What to write instead of what is refused, where an example of the kind would not say enough. */
  readonly remedy?: string;
  readonly range: Range;
  readonly member: Input<unknown> | null;
  /** What a sum for a class puts here: what was given, or one of these numbers; left out where sizes near the given one do. */
  readonly draw?: "as given" | readonly number[];
  /**
   * The units a rule of thumb has it in, one for each kind, or the input that names one: given in any unit of its kind it
   * goes into the formula as a number of these, and so do its constants stay as printed.
   */
  readonly reckonedIn?: readonly Unit<string>[] | string;
  /** Set where a number counts things, and is no coefficient of a rule. */
  readonly isCount?: true;
  /** Set where a list may have no members. */
  readonly mayBeEmpty?: true;
  readonly type?: T | undefined;
}

/** No bound at all. */
export const anything: Range = { atLeast: null, above: null, below: null };
const plain = { dimension: "number", member: null } as const;

/** A quantity above zero. */
export function positive<Q extends Quantity<string>>({ dimension, noun, example }: Kind<Q>, meaning: string): Input<Q> {
  return { what: "quantity", dimension, noun, meaning, example, range: { ...anything, above: 0 }, member: null };
}

/** A quantity of zero or more. */
export function atLeastZero<Q extends Quantity<string>>(
  { dimension, noun, example }: Kind<Q>,
  meaning: string,
): Input<Q> {
  return { what: "quantity", dimension, noun, meaning, example, range: { ...anything, atLeast: 0 }, member: null };
}

/** A whole number of things; the noun is theirs. */
export function whole(
  noun: string,
  meaning: string,
  bounds: { readonly atLeast: number; readonly atMost?: number },
): Input<number> {
  const example = String(Math.min(bounds.atMost ?? 8, Math.max(bounds.atLeast, 8)));
  return { ...plain, what: "whole", noun, meaning, example, range: { ...anything, ...bounds } };
}

/** A plain number above zero: the constant of a rule, or a place on the scale of one. */
export function plainNumber(noun: string, meaning: string): Input<number> {
  return { ...plain, what: "number", noun, meaning, example: "12.5", range: { ...anything, above: 0 } };
}

/** A number of things, of which one may be there in part: one and a half cones. */
export function partsToo(
  noun: string,
  meaning: string,
  bounds: { readonly atLeast: number } | null = null,
): Input<number> {
  return { ...plainNumber(noun, meaning), ...(bounds && { range: { ...anything, ...bounds } }), isCount: true };
}

/** A quantity above zero of either of two kinds. */
export function positiveEither<A extends Quantity<string>, B extends Quantity<string>>(
  first: Kind<A>,
  second: Kind<B>,
  noun: string,
  meaning: string,
): Input<A | B> {
  return { ...positive<A | B>(first, meaning), noun, orDimension: second.dimension };
}

/** One or more of the same kind. */
export function listOf<T>(member: Input<T>): Input<readonly T[]> {
  return { ...member, what: "list", example: `[${member.example}]`, member } as Input<readonly T[]>;
}

/** Any number of the same kind, or none: their sum is then nothing. */
export function noneOrMore<T>(member: Input<T>): Input<readonly T[]> {
  return { ...listOf(member), mayBeEmpty: true };
}

/** A unit the answer is wanted in. */
export function unitFor<D extends string>(
  { dimension, noun, example: amount }: Kind<Quantity<D>>,
  meaning: string,
): Input<Unit<D>> {
  const example = amount.slice(0, amount.lastIndexOf("("));
  return { what: "unit", dimension, noun: `a unit for ${noun}`, meaning, example, range: anything, member: null };
}

type UnitsOf<T> = T extends Quantity<infer D> ? Unit<D> : never;

/** An amount, or the answer, as a rule of thumb has it whose dimensions do not balance: a number of the unit it names. */
export function reckonedIn<T>(input: Input<T>, units: readonly UnitsOf<T>[] | string): Input<T> {
  return { ...input, reckonedIn: units };
}

/** An input that a sum for a class leaves as given, as the named constant of a rule, or takes from a list. */
export function drawnAs<T>(input: Input<T>, draw: "as given" | readonly number[]): Input<T> {
  return { ...input, draw };
}
