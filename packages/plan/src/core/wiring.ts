import { nodeOf, scopeOf, sourceOf } from "./source.js";
import type { Part, Source } from "./source.js";

/** What may be fixed and need not be: nobody is asked for it. */
export function wish<T, S extends string>(key: Source<T, S>): Source<T, S> {
  return sourceOf({ is: "wish", of: nodeOf(key) });
}

/** Where *not named* means *there is none*. */
export function orNone<T, N, S extends string>(key: Source<T, S>, none: Source<N>): Source<T | N, S> {
  return sourceOf({ is: "orNone", of: nodeOf(key), none: nodeOf(none) });
}

/** What no key changes. */
export function always<T>(value: T): Source<T> {
  return sourceOf({ is: "always", value });
}

/** Every row of a scope; within a yarn or a piece, the rows that belong to it. */
export function all<T, S extends string>(of: Source<T, S>): Source<readonly T[]> {
  const node = nodeOf(of);
  return sourceOf({ is: "all", of: node, over: scopeOf(node) });
}

/** Lists one after the other, as one. */
export function joined<T, S extends string>(...lists: readonly Source<readonly T[], S>[]): Source<readonly T[], S> {
  return sourceOf({ is: "joined", lists: lists.map(nodeOf) });
}

/** A field of the row, where a part made the rows. */
export function own<Row, K extends keyof Row & string, S extends string>(
  rows: Part<readonly Row[]>,
  scope: S,
  field: K,
): Source<Exclude<Row[K], undefined>, S> {
  return sourceOf({ is: "own", of: nodeOf(rows), scope, field });
}

/** A field of a key that is one group, or of what a part made. */
export function field<T, K extends keyof T & string, S extends string>(
  of: Source<T, S>,
  name: K,
): Source<NonNullable<T[K]>, S> {
  return sourceOf({ is: "field", of: nodeOf(of), field: name });
}

/** Sources as a list. */
export function these<T, S extends string>(...ones: readonly Source<T, S>[]): Source<readonly T[], S> {
  return sourceOf({ is: "these", ones: ones.map(nodeOf) });
}
