import type { Node, Part, Path, Source } from "./source.js";
import type { State } from "./state.js";

/** What makes a row: its name, its place in the job where it has one, and by scope the rows it belongs to. */
export interface RowOf {
  readonly name: string;
  readonly place?: string | number;
  readonly of?: Readonly<Record<string, string>>;
}

/** A row of a scope. */
export interface Row extends RowOf {
  readonly scope: string;
  readonly index: number;
}

/** The parts that make the rows of each scope, and for each number searched what must still say "enough". */
export interface Plan {
  readonly scopes: Readonly<Record<string, Part<readonly RowOf[]>>>;
  readonly searches: readonly { readonly of: Source<number, string>; readonly while: Source<"enough" | "short"> }[];
}

/** Another amount in a figure's place. */
export interface Instead {
  readonly of: Node;
  readonly row: string | null;
  readonly value: unknown;
}

/** A plan being worked out: each source when it is first asked for, each once. */
export interface Work {
  readonly plan: Plan;
  stateOf(node: Node, row: Row | null): State;
  /** The rows of a scope, or why they are not known. */
  rowsOf(scope: string): readonly Row[] | State;
  /** The row of another scope that a row belongs to. */
  ownerOf(row: Row, scope: string): Row;
  /** The rows of a scope that belong to a row; all of them where none says whose it is. */
  rowsIn(scope: string, row: Row | null): readonly Row[] | State;
  /** The same with another amount in a figure's place. */
  instead(other: Instead): Work;
}

/** Whether the rows are known. */
export function isRows(found: readonly Row[] | State): found is readonly Row[] {
  return Array.isArray(found);
}

/** The path of a key, the row's own place put where the star stands. */
export function pathIn(path: Path, row: Row | null): Path {
  return path.map((segment) => (segment === "*" ? (row?.place ?? row?.name ?? segment) : segment));
}

/** What stands in the job at a path; undefined where nothing does. */
export function valueAt(job: object, path: Path): unknown {
  return path.reduce<unknown>((so, segment) => {
    if (typeof so !== "object" || so === null || !Object.hasOwn(so, segment)) return undefined;
    return (so as Readonly<Record<string | number, unknown>>)[segment];
  }, job);
}
