import type { FaultPath } from "./fault.js";
import type { Node } from "./node.js";
import { opened } from "./node.js";

interface PlaceInFile {
  readonly path: FaultPath;
  readonly line?: number;
}

function childOf(
  node: Node,
  step: string | number,
): { readonly value: Node; readonly line?: number | undefined } | undefined {
  const inside = opened(node);
  if (inside.kind === "list" && typeof step === "number") {
    const value = inside.items[step];
    return value === undefined ? undefined : { value, line: value.line };
  }
  return inside.kind === "group" ? inside.entries.find(({ key }) => key === step) : undefined;
}

/**
 * Where a place of the job stands as it was written. Steps that are not written are passed over: the number of a run that
 * stands alone, the shape of a value.
 */
export function placeIn(node: Node, path: FaultPath): PlaceInFile {
  let here = node;
  let line = node.line;
  const written: (string | number)[] = [];
  for (const step of path) {
    const child = childOf(here, step);
    if (child === undefined) continue;
    here = child.value;
    line = child.line ?? here.line ?? line;
    written.push(step);
  }
  return line === undefined ? { path: written } : { path: written, line };
}
