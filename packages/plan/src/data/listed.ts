import type { Names } from "../core/origin.js";
import { nodeOf } from "../core/source.js";
import type { Node, Path } from "../core/source.js";
import * as groups from "../figures/groups.js";

/** A figure or a part of the list, by its group and name. */
export interface Listed {
  readonly group: string;
  readonly name: string;
  readonly node: Node;
  /** What it is worked once for: `plan`, or each row of a scope. */
  readonly scope: string;
}

/** A namespace has no order of its own that every bundler keeps. */
function inOrder<T>(named: Readonly<Record<string, T>>): readonly (readonly [string, T])[] {
  return Object.entries(named).sort(([one], [other]) => (one < other ? -1 : 1));
}

/** Everything on the list, group by group. */
export const LISTED: readonly Listed[] = inOrder<object>(groups).flatMap(([group, figures]) =>
  inOrder(figures as Readonly<Record<string, object>>).map(([name, one]) => {
    const node = nodeOf(one);
    return { group, name, node, scope: "scope" in node ? node.scope : "plan" };
  }),
);

/** The names by which figures are told. */
export const NAMES: Names = new Map(LISTED.map(({ group, name, node }) => [node, [group, name]]));

const BY_NAME = new Map(LISTED.map((one) => [`${one.group} ${one.name}`, one]));

/** Whether it has a label: a figure has, a part has none. */
export function isFigure({ node }: Listed): boolean {
  return "label" in node && node.label !== null;
}

/** What stands at a path such as `figures, yarn, natural, missing`, and in which row; null where nothing does. */
export function listedAt(path: Path): { readonly listed: Listed; readonly row: string | null } | null {
  const [first, group, ...rest] = path;
  const listed = BY_NAME.get(`${String(group)} ${String(rest.at(-1))}`);
  if (first !== "figures" || listed === undefined || rest.length !== (listed.scope === "plan" ? 1 : 2)) return null;
  return { listed, row: listed.scope === "plan" ? null : String(rest[0]) };
}
