import type { Node, Path } from "./source.js";

/** There, waiting for keys, or none: the formula's own refusal, in words. */
export type State =
  | { readonly is: "there"; readonly value: unknown; readonly way: Node | null }
  | { readonly is: "waiting"; readonly needs: readonly Path[] }
  | { readonly is: "none"; readonly why: string; readonly way: Node | null };

export function there(value: unknown, way: Node | null = null): State {
  return { is: "there", value, way };
}

/** What several of them together wait for, each key once; nothing, where one has no answer or all are there. */
export function togetherIn(states: readonly State[]): State | null {
  const needs = states.flatMap((state) => (state.is === "waiting" ? state.needs : []));
  if (states.some(({ is }) => is === "waiting")) return { is: "waiting", needs: eachOnce(needs) };
  return states.find(({ is }) => is === "none") ?? null;
}

function eachOnce(needs: readonly Path[]): readonly Path[] {
  return [...new Map(needs.map((path) => [JSON.stringify(path), path])).values()];
}

/** Of ways that all wait, the one that asks for least; a wish asks for nothing and is no way to wait for. */
export function shortest(states: readonly State[]): State {
  const asking = states.flatMap((state) => (state.is === "waiting" && state.needs.length > 0 ? [state] : []));
  return asking.sort((a, b) => a.needs.length - b.needs.length)[0] ?? { is: "waiting", needs: [] };
}
