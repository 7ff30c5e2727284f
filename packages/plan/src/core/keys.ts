import { nodeOf, sourceOf, standsFor } from "./source.js";
import type { Node, Path, Source } from "./source.js";

/** A group all of whose keys are optional is opened into keys; anything else is one key. */
type KeyOrKeys<V, S extends string> = [V] extends [object]
  ? string extends keyof V
    ? Source<V, S>
    : Record<never, never> extends V
      ? Keys<V, S>
      : Source<V, S>
  : Source<V, S>;

/** Typed references to the places of a group: not the values, which are known only when a job is there. */
export type Keys<T, S extends string> = { readonly [K in keyof T]-?: KeyOrKeys<NonNullable<T[K]>, S> };

function keyAt(scope: string, path: Path): object {
  const made = new Map<string, object>();
  const key = new Proxy(Object.freeze({}), {
    get(_, name): object | undefined {
      if (typeof name !== "string") return undefined;
      const child = made.get(name) ?? keyAt(scope, [...path, name]);
      made.set(name, child);
      return child;
    },
  });
  standsFor(key, { is: "key", scope, path });
  return key;
}

/** References to the keys of the job. */
export function keysOf<T>(): Keys<T, "plan"> {
  return keyAt("plan", []) as Keys<T, "plan">;
}

/** References to the keys of one row; `"*"` stands where its place in the job comes. */
export function keysOfRow<T, S extends string>(scope: S, ...path: readonly string[]): Keys<T, S> {
  return keyAt(scope, path) as Keys<T, S>;
}

/** A group of keys as one value. */
export function group<T, S extends string>(keys: Keys<T, S>): Source<T, S> {
  return sourceOf({ is: "group", of: nodeOf(keys) as Extract<Node, { is: "key" }> });
}

/** One key of a row. */
export function keyOfRow<T, S extends string>(scope: S, ...path: readonly string[]): Source<T, S> {
  return sourceOf({ is: "key", scope, path });
}
