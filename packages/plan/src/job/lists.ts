import { inside, refuse } from "./form.js";
import type { At, Form, Tree } from "./form.js";
import type { Node } from "./node.js";
import { opened } from "./node.js";

function membersOf<T>(form: Form<T>, nodes: readonly Node[], at: At): readonly T[] | null {
  const read = nodes.map((node, index) => {
    const place = inside(at, index);
    if (opened(node).kind === "nothing") {
      return refuse(place, node, {
        expected: "an entry of the list",
        remedy: "Fill it in, or take the dash away.",
        code: "missing",
      });
    }
    return form.read(node, place);
  });
  const isRead = (one: T | null): one is T => one !== null;
  return read.every(isRead) ? read : null;
}

/** A list of one or more. */
export function list<T>(noun: string, of: Form<T>, alone = false): Form<readonly T[]> {
  return {
    shape: { kind: "list", of, alone },
    write: (values) =>
      alone && values.length === 1 && values[0] !== undefined
        ? of.write(values[0])
        : { list: values.map((one): Tree => of.write(one)) },
    read: (given, at) => {
      const node = opened(given);
      if (node.kind === "nothing") return null;
      const expected = `a list of ${noun}`;
      if (node.kind === "list" && node.items.length > 0) return membersOf(of, node.items, at);
      const isEmpty = node.kind === "list";
      if (isEmpty)
        return refuse(at, node, { expected, remedy: "Leave the key out where there is none.", code: "empty" });
      if (!alone || given.kind === "data")
        return refuse(at, node, { expected, remedy: "Put it in brackets: [ … ].", code: "wrong-kind" });
      const one = of.read(node, at);
      return one === null ? null : [one];
    },
  };
}

/** A list, or one of its members without brackets. */
export function listOrOne<T>(noun: string, of: Form<T>): Form<readonly T[]> {
  return list(noun, of, true);
}
