import type { Calculation } from "@thrum/maths";
import { nodeOf, nodesOf, scopeOf, sourceOf } from "./source.js";
import type { Figure, Part, Source, Sources } from "./source.js";

type Readable<S extends string> = S | "plan";

type Given<S extends string> = Readonly<Record<string, Source<unknown, Readable<S>>>>;

type Values<G extends Sources> = { readonly [K in keyof G]: G[K]["gives"] };

/** The inputs of a formula, each with where it comes from. */
type Wiring<I, S extends string> = { readonly [K in keyof I]: Source<I[K], Readable<S>> };

type Ways<W extends string, T, S extends string> = { readonly [K in W]: Source<T, Readable<S>> };

/** The makers of what is worked once for `S`. */
export interface Worked<S extends string> {
  /** A formula with its inputs wired. */
  readonly figure: <I, R>(label: string, calculation: Calculation<I, R>, inputs: Wiring<NoInfer<I>, S>) => Figure<R, S>;
  /** A number of `noun`, counted or looked up, never reckoned. A cell formula of its own, where a workbook can count it. */
  readonly counted: <G extends Given<S>>(
    label: string,
    noun: string,
    given: G,
    make: (given: Values<G>) => number,
    cell?: string,
  ) => Figure<number, S>;
  /** A word that chooses a way. */
  readonly word: <G extends Given<S>, T extends string>(
    label: string,
    given: G,
    make: (given: Values<G>) => T,
  ) => Figure<T, S>;
  /** The first that does not wait. */
  readonly first: <T>(label: string, ...ways: readonly Source<T, Readable<S>>[]) => Figure<T, S>;
  /** One figure with several ways, named by a word. */
  readonly choice: <W extends string, T>(
    label: string,
    word: Source<W, Readable<S>>,
    ways: Ways<NoInfer<W>, T, S>,
  ) => Figure<T, S>;
  /** The largest whole number with which a word of the plan still says "enough"; which word, says the list of figures. */
  readonly searched: (label: string) => Figure<number, S>;
  readonly part: <G extends Given<S>, T>(given: G, make: (given: Values<G>) => T) => Part<T, S>;
  readonly partBy: <W extends string, T>(word: Source<W, Readable<S>>, ways: Ways<NoInfer<W>, T, S>) => Part<T, S>;
  readonly firstOf: <T>(...ways: readonly Source<T, Readable<S>>[]) => Part<T, S>;
  /** Within a row that belongs to others: the figure of the one it belongs to. */
  readonly its: <T, O extends string>(of: Source<T, O>) => Source<T, S>;
}

/** Makers for one scope: `plan`, or a row of it. */
export function worked<S extends string>(scope: S): Worked<S> {
  return {
    figure: (label, calculation, inputs) =>
      sourceOf({
        is: "figure",
        scope,
        label,
        inputs: nodesOf(inputs),
        calculation: calculation as unknown as Calculation<unknown, unknown>,
      }),
    counted: (label, noun, given, make, cell) =>
      sourceOf({
        is: "counted",
        scope,
        label,
        noun,
        given: nodesOf(given),
        cell: cell ?? null,
        make: make as (given: unknown) => unknown,
      }),
    word: (label, given, make) =>
      sourceOf({
        is: "counted",
        scope,
        label,
        noun: null,
        given: nodesOf(given),
        cell: null,
        make: make as (given: unknown) => unknown,
      }),
    first: (label, ...ways) => sourceOf({ is: "first", scope, label, ways: ways.map(nodeOf) }),
    choice: (label, word, ways) => sourceOf({ is: "choice", scope, label, word: nodeOf(word), ways: nodesOf(ways) }),
    searched: (label) => sourceOf({ is: "searched", scope, label }),
    part: (given, make) =>
      sourceOf({ is: "part", scope, given: nodesOf(given), make: make as (given: unknown) => unknown }),
    partBy: (word, ways) => sourceOf({ is: "choice", scope, label: null, word: nodeOf(word), ways: nodesOf(ways) }),
    firstOf: (...ways) => sourceOf({ is: "first", scope, label: null, ways: ways.map(nodeOf) }),
    its: (of) => {
      const node = nodeOf(of);
      return sourceOf({ is: "its", of: node, owner: scopeOf(node) });
    },
  };
}
