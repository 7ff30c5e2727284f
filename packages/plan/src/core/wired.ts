import { isRows, pathIn, valueAt } from "./row.js";
import type { Row } from "./row.js";
import type { Node } from "./source.js";
import { listed, shortest, there, togetherIn, withWay } from "./state.js";
import type { State } from "./state.js";

/** What works nothing out itself: a key, a list, a way chosen. */
export type Wired = Exclude<Node, { is: "figure" | "counted" | "part" | "searched" }>;

/** What wiring asks of the plan being worked out. */
export interface Asked {
  readonly job: object;
  readonly stateOf: (node: Node, row: Row | null) => State;
  readonly ownerOf: (row: Row, scope: string) => Row;
  readonly rowsIn: (scope: string, row: Row | null) => readonly Row[] | State;
}

function fieldOf({ stateOf }: Asked, of: Node, name: string, row: Row | null): State {
  const state = stateOf(of, row);
  if (state.is !== "there") return state;
  const value = (state.value as Readonly<Record<string, unknown>>)[name];
  if (value !== undefined) return there(value);
  return { is: "waiting", needs: of.is === "key" ? [pathIn([...of.path, name], row)] : [] };
}

/** The state of what is wired. */
export function wiredState(node: Wired, row: Row | null, asked: Asked): State {
  const { job, stateOf, ownerOf, rowsIn } = asked;
  switch (node.is) {
    case "always":
      return there(node.value);
    case "key":
    case "group": {
      const path = pathIn(node.is === "key" ? node.path : node.of.path, row);
      const value = valueAt(job, path);
      return value === undefined ? { is: "waiting", needs: [path] } : there(value);
    }
    case "wish": {
      const state = stateOf(node.of, row);
      return state.is === "waiting" ? { is: "waiting", needs: [] } : state;
    }
    case "orNone": {
      const state = stateOf(node.of, row);
      return state.is === "waiting" ? withWay(stateOf(node.none, row), node.none) : withWay(state, node.of);
    }
    case "its":
      if (row === null) throw new RangeError("no row to belong to");
      return stateOf(node.of, ownerOf(row, node.owner));
    case "all": {
      const found = rowsIn(node.over, row);
      if (!isRows(found)) return found;
      return listed(found.map((one) => stateOf(node.of, one)));
    }
    case "field":
      return fieldOf(asked, node.of, node.field, row);
    case "these":
      return listed(node.ones.map((one) => stateOf(one, row)));
    case "joined": {
      const lists = node.lists.map((one) => stateOf(one, row));
      return togetherIn(lists) ?? there(lists.flatMap((one) => (one.is === "there" ? one.value : [])));
    }
    case "own": {
      const state = stateOf(node.of, null);
      if (state.is !== "there" || row === null) return state;
      const value = (state.value as readonly Readonly<Record<string, unknown>>[])[row.index]?.[node.field];
      return value === undefined ? { is: "waiting", needs: [] } : there(value);
    }
    case "first": {
      const waiting: State[] = [];
      for (const way of node.ways) {
        const state = stateOf(way, row);
        if (state.is !== "waiting") return withWay(state, way);
        waiting.push(state);
      }
      return shortest(waiting);
    }
    case "choice": {
      const word = stateOf(node.word, row);
      if (word.is !== "there") return word;
      const way = node.ways[String(word.value)];
      if (way === undefined) throw new RangeError(`no way for ${String(word.value)}`);
      return withWay(stateOf(way, row), way);
    }
  }
}
