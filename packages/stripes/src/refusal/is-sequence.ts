import type { Sequence } from "../sequence/sequence.js";

/**
 * Whether a value is a sequence made by some copy of this package, and not one copied or built by hand. The brand is
 * shared by every copy; its number is that of the layout.
 */
export function isSequence(value: unknown): value is Sequence<unknown> {
  const given = Object(value) as { readonly "thrum.sequence.1"?: unknown; readonly runs?: unknown };
  return Object.hasOwn(given, "runs") && given["thrum.sequence.1"] === given.runs;
}
