import type { Quantity } from "./quantity.js";

/**
 * A kind of quantity as a value, so that a formula can ask for it. Its type has the same name:
 * `interface Length extends Quantity<"length"> {}` beside `const Length: Kind<Length>`.
 */
export interface Kind<Q> {
  readonly dimension: string;
  /** As a sentence wants it: "a length". */
  readonly noun: string;
  /** One of the kind, as one writes it in a program: "inches(21)". */
  readonly example: string;
  readonly type?: Q | undefined;
}

/** Declares a kind. */
export function kind<Q extends Quantity<string>>(dimension: Q["dimension"], noun: string, example: string): Kind<Q> {
  return { dimension, noun, example };
}
