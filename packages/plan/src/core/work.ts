import { nodeOf } from "./source.js";
import type { Node } from "./source.js";
import { answerOf } from "./answer.js";
import { largest } from "./largest.js";
import { readersOf } from "./reads.js";
import { isRows, pathIn, valueAt } from "./row.js";
import type { Instead, Plan, Row, RowOf, Work } from "./row.js";
import { listed, shortest, there, togetherIn, withWay } from "./state.js";
import type { State } from "./state.js";

/** Another amount in a figure's place, in a plan worked out already: what the figure cannot change is not worked out anew. */
interface Changed extends Instead {
  readonly before: Work;
  readonly changes: (node: Node) => boolean;
}

/** Works a plan out from the job, for whoever asks. */
export function work(plan: Plan, job: object): Work {
  return worked(plan, job, null);
}

function worked(plan: Plan, job: object, changed: Changed | null): Work {
  const states = new Map<Node, Map<Row | null, State>>();
  const rows = new Map<string, readonly Row[] | State>();

  function rowsOf(scope: string): readonly Row[] | State {
    const known = rows.get(scope);
    if (known !== undefined) return known;
    const maker = plan.scopes[scope];
    if (maker === undefined) throw new RangeError(`no scope ${scope}`);
    if (changed !== null && !changed.changes(nodeOf(maker))) return changed.before.rowsOf(scope);
    const state = stateOf(nodeOf(maker), null);
    const made =
      state.is === "there" ? (state.value as readonly RowOf[]).map((row, index) => ({ ...row, scope, index })) : state;
    rows.set(scope, made);
    return made;
  }

  function ownerOf(row: Row, scope: string): Row {
    const name = row.of?.[scope];
    const owners = rowsOf(scope);
    const owner = Array.isArray(owners) ? (owners as readonly Row[]).find((one) => one.name === name) : undefined;
    if (owner === undefined) throw new RangeError(`${row.name} belongs to no ${scope}`);
    return owner;
  }

  function rowsIn(scope: string, row: Row | null): readonly Row[] | State {
    const found = rowsOf(scope);
    if (row === null || !isRows(found)) return found;
    return found.filter(({ of }) => of?.[row.scope] === undefined || of[row.scope] === row.name);
  }

  function stateOf(node: Node, from: Row | null): State {
    const row = "scope" in node && node.scope === "plan" ? null : from;
    let byRow = states.get(node);
    const known = byRow?.get(row);
    if (known !== undefined) return known;
    if (changed !== null) {
      if (!changed.changes(node)) return changed.before.stateOf(node, row);
      if (node === changed.of && (row?.name ?? null) === changed.row) return there(changed.value);
    }
    const state = workedOut(node, row);
    // Looked up again: what it reads may have been asked for it by another way.
    byRow = states.get(node) ?? new Map<Row | null, State>();
    byRow.set(row, state);
    states.set(node, byRow);
    return state;
  }

  function workedOut(node: Node, row: Row | null): State {
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
        return fieldOf(node.of, node.field, row);
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
      case "figure":
        return made(node.inputs, row, (input) => node.calculation(input));
      case "counted":
      case "part":
        return made(node.given, row, node.make);
      case "searched":
        return searched(node, row);
    }
  }

  function fieldOf(of: Node, name: string, row: Row | null): State {
    const state = stateOf(of, row);
    if (state.is !== "there") return state;
    const value = (state.value as Readonly<Record<string, unknown>>)[name];
    if (value !== undefined) return there(value);
    return { is: "waiting", needs: of.is === "key" ? [pathIn([...of.path, name], row)] : [] };
  }

  function made(given: Readonly<Record<string, Node>>, row: Row | null, make: (given: unknown) => unknown): State {
    const values: Record<string, unknown> = {};
    const missing: State[] = [];
    for (const name of Object.keys(given)) {
      const state = stateOf(given[name] as Node, row);
      if (state.is === "there") values[name] = state.value;
      else missing.push(state);
    }
    const absent = togetherIn(missing);
    if (absent !== null) return withWay(absent, null);
    return answerOf(make, values);
  }

  function searched(node: Node, row: Row | null): State {
    const search = plan.searches.find(({ of }) => nodeOf(of) === node);
    if (search === undefined) throw new RangeError("nothing says how far to search");
    return largest((value) => instead({ of: node, row: row?.name ?? null, value }).stateOf(nodeOf(search.while), null));
  }

  function instead(other: Instead): Work {
    return worked(plan, job, { ...other, before: self, changes: readersOf(plan, other.of) });
  }

  const self: Work = { plan, stateOf, rowsOf, ownerOf, rowsIn, instead };
  return self;
}
