import type { Calculation } from "@thrum/maths";

/** A place in the plan's data or in the job, segment by segment. */
export type Path = readonly (string | number)[];

/**
 * What a figure or a part may read. `gives` and `at` are there for the compiler alone: what comes out of it, and what
 * it is worked once for.
 */
export interface Source<T, S extends string = "plan"> {
  readonly gives: T;
  readonly at: S;
}

/** A printed amount: a formula with its inputs wired, or something counted. */
export interface Figure<T, S extends string = "plan"> extends Source<T, S> {
  readonly kind: "figure";
}

/** What is no sum: a list or report, made by an ordinary function. */
export interface Part<T, S extends string = "plan"> extends Source<T, S> {
  readonly kind: "part";
}

export type Sources = Readonly<Record<string, Source<unknown, string>>>;
type Nodes = Readonly<Record<string, Node>>;

/** How a source is worked out. */
export type Node =
  | { readonly is: "key"; readonly scope: string; readonly path: Path }
  | { readonly is: "group"; readonly of: Extract<Node, { is: "key" }> }
  | { readonly is: "wish"; readonly of: Node }
  | { readonly is: "orNone"; readonly of: Node; readonly none: Node }
  | { readonly is: "always"; readonly value: unknown }
  | { readonly is: "all"; readonly of: Node; readonly over: string }
  | { readonly is: "its"; readonly of: Node; readonly owner: string }
  | { readonly is: "own"; readonly of: Node; readonly scope: string; readonly field: string }
  | { readonly is: "field"; readonly of: Node; readonly field: string }
  | { readonly is: "these"; readonly ones: readonly Node[] }
  | { readonly is: "joined"; readonly lists: readonly Node[] }
  | { readonly is: "first"; readonly scope: string; readonly label: string | null; readonly ways: readonly Node[] }
  | {
      readonly is: "choice";
      readonly scope: string;
      readonly label: string | null;
      readonly word: Node;
      readonly ways: Nodes;
    }
  | {
      readonly is: "figure";
      readonly scope: string;
      readonly label: string;
      readonly calculation: Calculation<unknown, unknown>;
      readonly inputs: Nodes;
    }
  | {
      readonly is: "counted";
      readonly scope: string;
      readonly label: string;
      /** What is counted; null for a word. */
      readonly noun: string | null;
      readonly given: Nodes;
      readonly make: (given: unknown) => unknown;
      readonly cell: string | null;
    }
  | { readonly is: "part"; readonly scope: string; readonly given: Nodes; readonly make: (given: unknown) => unknown }
  | { readonly is: "searched"; readonly scope: string; readonly label: string };

const nodes = new WeakMap<object, Node>();

/** The node behind a source. Only the core sees it. */
export function nodeOf(source: object): Node {
  const node = nodes.get(source);
  if (node === undefined) throw new TypeError("no source of the plan");
  return node;
}

/** The one place where a node becomes what the compiler knows it by. */
export function sourceOf<A extends Source<unknown, string>>(node: Node): A {
  const source = Object.freeze({ node });
  nodes.set(source, node);
  return source as unknown as A;
}

/** Gives a made object the node it stands for. */
export function standsFor(source: object, node: Node): void {
  nodes.set(source, node);
}

/** The nodes of several sources, by their names. */
export function nodesOf(sources: object): Nodes {
  return Object.fromEntries(Object.entries(sources).map(([name, source]) => [name, nodeOf(source as object)]));
}

/** The scope of a node: it is worked out once for the plan, or once for each row of this scope. */
export function scopeOf(node: Node): string {
  if (!("scope" in node)) throw new TypeError("a row's figure or key is expected here");
  return node.scope;
}
