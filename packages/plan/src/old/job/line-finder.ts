import { isMap, isScalar, isSeq } from "yaml";
import type { Document, LineCounter } from "yaml";
import type { Place } from "./placed-fault.js";

const startOf = (node: unknown): number | undefined =>
  (node as { range?: readonly number[] | null } | null | undefined)?.range?.[0];

/** A key of the file as it becomes a name in the job. */
export function keyText(key: unknown): string {
  return String(isScalar(key) ? key.value : key);
}

function childrenOf(node: unknown): ReadonlyMap<string, unknown> {
  if (isMap(node)) return new Map(node.items.map(({ key, value }) => [keyText(key), value]));
  return new Map(isSeq(node) ? node.items.map((one, at) => [String(at), one]) : []);
}

/** Finds the line of the nearest thing on a path that stands in the file; each part is looked through only once. */
export function lineFinder(document: Document, lines: LineCounter): (path: Place) => number {
  const known = new Map<unknown, ReadonlyMap<string, unknown>>();
  const childOf = (node: unknown, key: string): unknown => {
    const children = known.get(node) ?? childrenOf(node);
    known.set(node, children);
    return children.get(key);
  };
  return (path) => {
    let node: unknown = document.contents;
    let start = startOf(node);
    let line = 1;
    for (const key of path) {
      if (start === undefined) break;
      line = lines.linePos(start).line;
      node = childOf(node, String(key));
      start = startOf(node);
    }
    return start === undefined ? line : lines.linePos(start).line;
  };
}
