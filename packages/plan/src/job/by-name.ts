import { inside, refuse } from "./form.js";
import type { Branch, Form } from "./form.js";
import type { Node } from "./node.js";
import { opened } from "./node.js";

/** What a name may be; undefined where it is one. */
export type NameFault = (name: string) => string | undefined;

/** Entries by a name of the weaver's own. */
export function byName<T>(
  noun: string,
  of: Form<T>,
  nothing: T | null,
  nameFault: NameFault,
): Form<Readonly<Record<string, T>>> {
  return {
    shape: { kind: "byName", of, noun },
    write: (value) => ({ group: Object.entries(value).map(([name, one]): Branch => [name, of.write(one)]) }),
    read: (given, at) => {
      const node = opened(given);
      if (node.kind === "nothing") return null;
      if (node.kind !== "group") {
        const remedy = `Write each on a line of its own: its name, a colon and what is said of it.`;
        return refuse(at, node, { expected: `${noun} by their names`, remedy, code: "wrong-kind" });
      }
      const printed = new Map<string, string>();
      const read = node.entries.flatMap(({ key, value, line }): [string, T][] => {
        const name = key.trim().replace(/\s+/gu, " ").normalize("NFC");
        const place = inside(at, name);
        const remedy = nameFault(name);
        const here: Node = { kind: "nothing", line };
        if (remedy !== undefined) refuse(place, here, { expected: "a name", received: JSON.stringify(name), remedy });
        const same = printed.get(printedName(name));
        if (same !== undefined) {
          const expected = "names that can be told apart on paper";
          refuse(place, here, {
            expected,
            received: `${JSON.stringify(same)} and ${JSON.stringify(name)}`,
            remedy: "Give one of them another name.",
          });
        }
        printed.set(printedName(name), name);
        const one = of.read(value, place) ?? (opened(value).kind === "text" ? null : nothing);
        return one === null ? [] : [[name, one]];
      });
      return read.length === 0 ? null : Object.fromEntries(read);
    },
  };
}

/** A name as it looks on paper, whatever characters it is made of. */
function printedName(name: string): string {
  return name
    .normalize("NFKC")
    .replace(/[\p{Cf}\p{Cc}\s]+/gu, "")
    .toLowerCase();
}
