import { isMirrored, isRepeated } from "./runs.js";
import type { AnyRun, Runs } from "./runs.js";

/** The stripe at an edge of a list: how large, and of what; neighbours of one name are one stripe, those of none never. */
interface Edge {
  readonly size: number;
  readonly of: string | null;
  /** Of what on the way back. */
  readonly turned: string | null;
}

/** What one run comes to. */
export type Measured<Run> = (run: Run) => Edge;

/** A list by its size and the stripes at its two edges; of one stripe throughout, both are the whole. */
interface Extent {
  readonly size: number;
  readonly first: Edge;
  readonly last: Edge;
}

const turnedEdge = ({ size, of, turned }: Edge): Edge => ({ size, of: turned, turned: of });
const isOneStripe = ({ size, first }: Extent): boolean => first.size === size;
const longer = (edge: Edge, by: number): Edge => ({ ...edge, size: edge.size + by });

function joined(one: Extent, other: Extent): Extent {
  const meet = one.last.of !== null && one.last.of === other.first.of;
  return {
    size: one.size + other.size,
    first: meet && isOneStripe(one) ? longer(one.first, other.first.size) : one.first,
    last: meet && isOneStripe(other) ? longer(other.last, one.last.size) : other.last,
  };
}

function repeated(extent: Extent, times: number): Extent {
  const size = extent.size * times;
  return isOneStripe(extent) && extent.first.of !== null
    ? { size, first: { ...extent.first, size }, last: { ...extent.last, size } }
    : { ...extent, size };
}

function mirrored(extent: Extent, once: boolean): Extent {
  const back = { size: extent.size, first: turnedEdge(extent.last), last: turnedEdge(extent.first) };
  if (!once) return joined(extent, back);
  const size = extent.size * 2 - extent.last.size;
  return isOneStripe(extent) ? extent : { size, first: extent.first, last: back.last };
}

function extentOf<Run>(run: AnyRun<Run>, measured: Measured<Run>): Extent | null {
  if (isRepeated(run)) {
    const list = extentOfList(run.of, measured);
    return list === null ? null : repeated(list, run.repeat === "the rest" ? 1 : run.repeat);
  }
  if (isMirrored(run)) {
    const list = extentOfList(run.mirror, measured);
    return list === null ? null : mirrored(list, run.middle === "once");
  }
  const edge = measured(run);
  return { size: edge.size, first: edge, last: edge };
}

function extentOfList<Run>(list: Runs<Run>, measured: Measured<Run>): Extent | null {
  return list.reduce<Extent | null>((sum, run) => {
    const next = extentOf(run, measured);
    return sum === null || next === null ? (sum ?? next) : joined(sum, next);
  }, null);
}

/** How large the list is once it is laid out, reckoned without laying it out; an open place counts as one. */
export function exactSize<Run>(list: Runs<Run>, measured: Measured<Run>): number {
  return extentOfList(list, measured)?.size ?? 0;
}
