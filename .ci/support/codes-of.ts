import { attempt } from "@thrum/maths";

/** Every fault with which a call is refused, as its code and its place: "out-of-range edges.0"; none where it is not refused. */
export function codesOf(call: (nothing: never) => unknown, given: unknown): readonly string[] {
  const read = attempt(call as (input: unknown) => unknown, given);
  return read.ok ? [] : read.faults.map(({ code, path }) => [code, path.join(".")].join(" ").trim());
}
