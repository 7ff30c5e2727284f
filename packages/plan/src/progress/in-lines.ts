import { inside, refuse } from "../job/form.js";
import type { At, Form } from "../job/form.js";
import type { Node } from "../job/node.js";
import { opened } from "../job/node.js";

/** The members of a list and of the lists in it, which are only its lines. */
function flattened(node: Node, at: At): readonly (readonly [Node, At])[] {
  const list = opened(node);
  if (list.kind !== "list") return [[node, at]];
  return list.items.flatMap((item, index) => flattened(item, inside(at, index)));
}

/** A list that may be broken into lines, each a list; as data it is one list. */
export function inLines<T>(noun: string, of: Form<T>, inLine: number): Form<readonly T[]> {
  return {
    shape: { kind: "list", of, alone: false },
    write: (members) => {
      const written = members.map((one) => of.write(one));
      const lines = Array.from({ length: Math.ceil(written.length / inLine) }, (_, line) => {
        return { list: written.slice(line * inLine, (line + 1) * inLine) };
      });
      return lines.length === 1 ? (lines[0] ?? { list: [] }) : { list: lines };
    },
    read: (node, at) => {
      const given = opened(node);
      if (given.kind === "nothing") return null;
      const members = flattened(node, at);
      if (given.kind !== "list" || members.length === 0) {
        return refuse(at, given, { expected: `a list of ${noun}`, remedy: "Leave the key out where there is none." });
      }
      const read = members.map(([member, place]) => of.read(member, place));
      const isRead = (one: T | null): one is T => one !== null;
      return read.every(isRead) ? read : null;
    },
  };
}
