import { pathOf } from "./origin.js";
import type { Names } from "./origin.js";
import { nodeOf } from "./source.js";
import type { Node, Part, Path, Source } from "./source.js";
import { pathIn } from "./row.js";
import type { Row, RowOf } from "./row.js";

/** What a reader finds of a source in a plan's data: there, waiting for keys, or none. */
export type Seen<T> =
  | { readonly is: "there"; readonly value: T }
  | { readonly is: "waiting"; readonly needs: readonly Path[] }
  | { readonly is: "none"; readonly why: string; readonly label: string };

/** Reads figures, parts and keys out of a plan's data, or a copy of it. */
export interface LookUp {
  readonly see: <T>(source: Source<T, string>, row?: Row | null) => Seen<T>;
  readonly rows: (scope: string) => Seen<readonly Row[]>;
}

/** The group and name of what is listed, and the part that makes the rows of each scope. */
export interface Listed {
  readonly names: Names;
  readonly scopes: Readonly<Record<string, Part<readonly RowOf[]>>>;
}

interface Datum {
  readonly value: unknown;
  readonly needs: readonly Path[];
  readonly why: string | null;
  readonly label?: string;
}

function valueAt(data: object, path: Path): unknown {
  return path.reduce<unknown>((so, segment) => {
    if (typeof so !== "object" || so === null || !Object.hasOwn(so, segment)) return undefined;
    return (so as Readonly<Record<string | number, unknown>>)[segment];
  }, data);
}

function seenOf(datum: Datum): Seen<unknown> {
  const { value, needs, why, label = "" } = datum;
  if (why !== null) return { is: "none", why, label };
  return value === null ? { is: "waiting", needs } : { is: "there", value };
}

/** What is in a plan's data, by the constants that name it. */
export function lookUpIn(data: { readonly job: object; readonly figures: object }, { names, scopes }: Listed): LookUp {
  const within = (seen: Seen<unknown>, ...path: Path): Seen<unknown> => {
    if (seen.is !== "there") return seen;
    const value = valueAt(Object(seen.value) as object, path);
    return value === undefined || value === null ? { is: "waiting", needs: [] } : { is: "there", value };
  };

  function see(node: Node, row: Row | null): Seen<unknown> {
    const path = pathOf(names, node, row);
    if (path !== null) {
      const datum = valueAt(data, path);
      if (datum !== undefined) return seenOf(datum as Datum);
      return row === null ? { is: "waiting", needs: [] } : rowsOf(row.scope);
    }
    if (node.is === "key") {
      const at = pathIn(node.path, row);
      const value = valueAt(data.job, at);
      return value === undefined ? { is: "waiting", needs: [at] } : { is: "there", value };
    }
    if (node.is === "group") return see(node.of, row);
    if (node.is === "own") return within(see(node.of, null), row?.index ?? 0, node.field);
    if (node.is === "field") return within(see(node.of, row), node.field);
    if (node.is !== "its") throw new TypeError(`a view reads what is listed, and keys; not this ${node.is}`);
    const rows = rowsOf(node.owner);
    if (rows.is !== "there") return rows;
    return see(node.of, rows.value.find(({ name }) => name === row?.of?.[node.owner]) ?? null);
  }

  function rowsOf(scope: string): Seen<readonly Row[]> {
    const maker = scopes[scope];
    if (maker === undefined) throw new RangeError(`no scope ${scope}`);
    const seen = see(nodeOf(maker), null) as Seen<readonly RowOf[]>;
    if (seen.is !== "there") return seen;
    return { is: "there", value: seen.value.map((row, index) => ({ ...row, scope, index })) };
  }

  return {
    see: <T>(source: Source<T, string>, row: Row | null = null) => see(nodeOf(source), row) as Seen<T>,
    rows: rowsOf,
  };
}
