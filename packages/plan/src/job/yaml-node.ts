import { isMap, isScalar, isSeq, LineCounter } from "yaml";

import type { Fault } from "./fault.js";
import { printable } from "../text/printable.js";
import { composed } from "./yaml-document.js";
import type { Entry, Node } from "./node.js";

export interface YamlReading {
  readonly node: Node;
  readonly faults: readonly Omit<Fault, "function">[];
}

const start = (node: unknown): number => (isScalar(node) || isMap(node) || isSeq(node) ? (node.range?.[0] ?? 0) : 0);

const words = (value: unknown): string => (typeof value === "string" ? value : "");

/** The parts of a file with their lines; every value is the text that stands there. */
export function yamlNode(text: string): YamlReading {
  const lines = new LineCounter();
  const { document, fault } = composed(text, lines);
  if (document === null) return { node: { kind: "nothing" }, faults: fault === null ? [] : [fault] };
  const faults: Omit<Fault, "function">[] = [];
  const node = nodeOf(
    document.contents,
    [],
    (offset) => lines.linePos(offset).line,
    (one) => faults.push(one),
  );
  return { node, faults };
}

function nodeOf(
  contents: unknown,
  path: Fault["path"],
  lineAt: (offset: number) => number,
  tell: (fault: Omit<Fault, "function">) => void,
  line = lineAt(start(contents)),
): Node {
  if (isSeq(contents))
    return {
      kind: "list",
      line,
      items: contents.items.map((item, index) => nodeOf(item, [...path, index], lineAt, tell)),
    };
  if (isMap(contents)) {
    const seen = new Map<string, number>();
    const entries = contents.items.flatMap(({ key, value }): Entry[] => {
      const name = isScalar(key) ? words(key.value) : "";
      const here = isScalar(key) ? lineAt(start(key)) : line;
      const place = [...path, name];
      const faultHere = keyFault(key, name, seen.get(name), here);
      if (faultHere !== null) tell({ code: "unreadable", path: place, line: here, params: {}, ...faultHere });
      seen.set(name, here);
      const below = isScalar(value) ? undefined : here;
      return faultHere === null
        ? [
            {
              key: name,
              line: here,
              value: value === null ? { kind: "nothing", line: here } : nodeOf(value, place, lineAt, tell, below),
            },
          ]
        : [];
    });
    return { kind: "group", line, entries };
  }
  if (!isScalar(contents)) return { kind: "nothing", line };
  const isEmpty = contents.type === "PLAIN" && (contents.source ?? "") === "";
  return isEmpty ? { kind: "nothing", line } : { kind: "text", text: words(contents.value), line };
}

/** Why this can be no key; null where it can. */
function keyFault(
  key: unknown,
  name: string,
  earlier: number | undefined,
  line: number,
): Pick<Fault, "expected" | "received" | "remedy"> | null {
  const isPlain = isScalar(key) && key.type !== "BLOCK_LITERAL" && key.type !== "BLOCK_FOLDED";
  if (!isPlain)
    return { expected: "a key in one text", received: "a list or group as a key", remedy: "Write the key as text." };
  if (name === "<<")
    return { expected: "every value written out", received: "a merge", remedy: "Write the values themselves." };
  if (earlier === undefined) return null;
  return {
    expected: "every key once",
    received: `${name === "" ? "no name" : printable(name)} on line ${String(earlier)} and line ${String(line)}`,
    remedy: "Keep one.",
  };
}
