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
  if (states.every(({ is }) => is === "there")) return null;
  const waiting = states.flatMap((state) => (state.is === "waiting" ? [state] : []));
  if (waiting.length > 0) return { is: "waiting", needs: eachOnce(waiting.flatMap(({ needs }) => needs)) };
  return states.find(({ is }) => is === "none") ?? null;
}

function eachOnce(needs: readonly Path[]): readonly Path[] {
  if (needs.length < 2) return needs;
  return [...new Map(needs.map((path) => [JSON.stringify(path), path])).values()];
}

/** Of ways that all wait, the one that asks for least; a wish asks for nothing and is no way to wait for. */
export function shortest(states: readonly State[]): State {
  const asking = states.flatMap((state) => (state.is === "waiting" && state.needs.length > 0 ? [state] : []));
  return asking.sort((a, b) => a.needs.length - b.needs.length)[0] ?? { is: "waiting", needs: [] };
}

/** A list of what several gave. */
export function listed(states: readonly State[]): State {
  return togetherIn(states) ?? there(states.map((state) => (state.is === "there" ? state.value : null)));
}

/** The same state, with the way by which it was reached. */
export function withWay(state: State, way: Node | null): State {
  return state.is === "waiting" ? state : { ...state, way };
}
