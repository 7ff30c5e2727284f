import { originOf, pathOf } from "./origin.js";
import type { Names, Origin } from "./origin.js";
import type { Node, Path } from "./source.js";
import type { Row, Work } from "./row.js";

/** A figure as data. */
export interface FigureData<T> {
  readonly label: string;
  readonly value: T | null;
  /** The name of the formula; null for what is counted or is another figure, or a key, as it stands. */
  readonly calculation: string | null;
  /** Each input by its name; of a figure that is another as it stands, `is`. */
  readonly from: Readonly<Record<string, Origin>>;
  /** The keys it waits for. */
  readonly needs: readonly Path[];
  /** Why there is none: the formula's own refusal. */
  readonly why: string | null;
}

/** A part as data. */
export interface PartData<T> {
  readonly value: T | null;
  readonly needs: readonly Path[];
  readonly why: string | null;
}

/** The way a figure went, through choices that have no name of their own. */
function wayOf(work: Work, names: Names, node: Node, row: Row | null): Node {
  const state = work.stateOf(node, row);
  if ((node.is !== "first" && node.is !== "choice") || state.is === "waiting" || state.way === null) return node;
  return pathOf(names, state.way, row) === null ? wayOf(work, names, state.way, row) : state.way;
}

/** A part as data. */
export function partData(work: Work, node: Node, row: Row | null): PartData<unknown> {
  const state = work.stateOf(node, row);
  return {
    value: state.is === "there" ? state.value : null,
    needs: state.is === "waiting" ? state.needs : [],
    why: state.is === "none" ? state.why : null,
  };
}

/** What a node reads, where it works something out itself. */
function readBy(node: Node): Readonly<Record<string, Node>> | null {
  if (node.is === "figure") return node.inputs;
  if (node.is === "counted" || node.is === "part") return node.given;
  return node.is === "searched" ? {} : null;
}

/** A figure as data, with what it was worked out from. */
export function figureData(work: Work, names: Names, node: Node, row: Row | null): FigureData<unknown> {
  const label = "label" in node ? (node.label ?? "") : "";
  const data = partData(work, node, row);
  if (work.stateOf(node, row).is === "waiting") return { label, calculation: null, from: {}, ...data };
  const way = wayOf(work, names, node, row);
  const isItself = way === node || pathOf(names, way, row) === null;
  const reads = (isItself ? readBy(way) : null) ?? { is: way };
  const known = Object.entries(reads).filter(([, one]) => work.stateOf(one, row).is === "there");
  const from = Object.fromEntries(known.map(([name, one]) => [name, originOf(work, names, one, row)]));
  const calculation = isItself && way.is === "figure" ? way.calculation.declaration.name : null;
  return { label, calculation, from, ...data };
}
