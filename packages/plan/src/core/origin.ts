import type { Node, Path } from "./source.js";
import { isRows, pathIn } from "./row.js";
import type { Row, Work } from "./row.js";

/** Where an amount came from: a place in the plan's data, an amount that no key changes, or a list of these. */
export type Origin = { readonly path: Path } | { readonly amount: unknown } | { readonly list: readonly Origin[] };

/** The group and the name of every figure and part that has one. */
export type Names = ReadonlyMap<Node, readonly [group: string, name: string]>;

/** The path of a figure or a part in the plan's data. */
export function pathOf(names: Names, node: Node, row: Row | null): Path | null {
  const name = names.get(node);
  if (name === undefined) return null;
  return ["figures", name[0], ...("scope" in node && node.scope !== "plan" && row !== null ? [row.name] : []), name[1]];
}

/** The list of sources that a named list is, where it went that way. */
function listTaken(work: Work, node: Node, row: Row | null): Node | null {
  if ((node.is !== "first" && node.is !== "choice") || node.label !== null) return null;
  const state = work.stateOf(node, row);
  const way = state.is === "waiting" ? null : state.way;
  return way?.is === "these" || way?.is === "joined" ? way : null;
}

/** The members of a list, each with where it came from. */
function membersOf(work: Work, names: Names, node: Node, row: Row | null): readonly Origin[] {
  const origin = originOf(work, names, node, row);
  if ("list" in origin) return origin.list;
  const state = work.stateOf(node, row);
  const members: readonly unknown[] = state.is === "there" && Array.isArray(state.value) ? state.value : [];
  if ("amount" in origin) return members.map((amount) => ({ amount }));
  const isWhole = node.is === "key" || pathOf(names, node, row) === null;
  const path = isWhole ? origin.path : [...origin.path, "value"];
  return members.map((_, at) => ({ path: [...path, at] }));
}

/** Where what a source gives came from, once it is there. */
export function originOf(work: Work, names: Names, node: Node, row: Row | null): Origin {
  const again = (other: Node, at: Row | null): Origin => originOf(work, names, other, at);
  const way = listTaken(work, node, row);
  if (way !== null) return originOf(work, names, way, row);
  const path = pathOf(names, node, row);
  if (path !== null) return { path };
  switch (node.is) {
    case "key":
      return { path: ["job", ...pathIn(node.path, row)] };
    case "group":
    case "wish":
      return again(node.of, row);
    case "always":
      return { amount: node.value };
    case "its":
      return again(node.of, row === null ? null : work.ownerOf(row, node.owner));
    case "all": {
      const rows = work.rowsIn(node.over, row);
      return { list: isRows(rows) ? rows.map((one) => again(node.of, one)) : [] };
    }
    case "these":
      return { list: node.ones.map((one) => again(one, row)) };
    case "field": {
      const whole = again(node.of, row);
      if (!("path" in whole)) return whole;
      return { path: [...whole.path, ...(node.of.is === "key" ? [] : ["value"]), node.field] };
    }
    case "joined":
      return { list: node.lists.flatMap((one) => membersOf(work, names, one, row)) };
    case "own":
      return { path: [...(pathOf(names, node.of, null) ?? []), "value", row?.index ?? 0, node.field] };
    case "orNone":
    case "first":
    case "choice": {
      const state = work.stateOf(node, row);
      if (state.is !== "waiting" && state.way !== null) return again(state.way, row);
      throw new RangeError("a way that was not taken has no origin");
    }
    default:
      throw new RangeError(`a figure without a name is read: ${"label" in node ? String(node.label) : node.is}`);
  }
}
