import type { Sequence } from "./sequence.js";

/** Shared by every copy of the package; the number is that of the layout. */
export const BRAND: unique symbol = Symbol.for("thrum.sequence.1") as never;

/** Whether a value is a sequence made by some copy of this package, and not one copied or built by hand. */
export function isSequence(value: unknown): value is Sequence<unknown> {
  const given = Object(value) as { readonly [BRAND]?: unknown; readonly runs?: unknown };
  return Object.hasOwn(given, "runs") && given[BRAND] === given.runs;
}
