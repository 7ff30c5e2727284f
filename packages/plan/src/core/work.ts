import { nodeOf } from "./source.js";
import type { Node } from "./source.js";
import { answerOf } from "./answer.js";
import { largest } from "./largest.js";
import { readersOf } from "./reads.js";
import { isRows } from "./row.js";
import type { Instead, Plan, Row, RowOf, Work } from "./row.js";
import { there, togetherIn, withWay } from "./state.js";
import type { State } from "./state.js";
import { wiredState } from "./wired.js";
import type { Asked } from "./wired.js";

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
    if (node.is === "figure") return made(node.inputs, row, (input) => node.calculation(input));
    if (node.is === "counted" || node.is === "part") return made(node.given, row, node.make);
    return node.is === "searched" ? searched(node, row) : wiredState(node, row, asked);
  }

  function made(given: Readonly<Record<string, Node>>, row: Row | null, make: (given: unknown) => unknown): State {
    const values: Record<string, unknown> = {};
    const missing: State[] = [];
    for (const [name, node] of Object.entries(given)) {
      const state = stateOf(node, row);
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

  const asked: Asked = { job, stateOf, ownerOf, rowsIn };
  const self: Work = { plan, stateOf, rowsOf, ownerOf, rowsIn, instead };
  return self;
}
