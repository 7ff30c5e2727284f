import { inside, refuse } from "./form.js";
import type { At, Branch, Form } from "./form.js";
import { unlike } from "../text/near-name.js";
import type { Entry, Node } from "./node.js";
import { entryOf, opened } from "./node.js";

export type Keys<T> = { readonly [K in keyof T]-?: Form<NonNullable<T[K]>> };

/** A group of keys. */
export interface Group<T> extends Form<T> {
  readonly keys: Keys<T>;
}

type Forms = Readonly<Record<string, Form<unknown>>>;

function readEntries(forms: Forms, entries: readonly Entry[], at: At): Readonly<Record<string, unknown>> {
  const names = Object.keys(forms);
  const read = names.flatMap((name): [string, unknown][] => {
    const entry = entries.find(({ key }) => key === name);
    const value = entry === undefined ? null : (forms[name]?.read(entry.value, inside(at, name)) ?? null);
    return value === null ? [] : [[name, value]];
  });
  for (const { key, line, value } of entries) {
    if (names.includes(key)) continue;
    const place = inside(at, key);
    const expected = at.path.length === 0 ? "a key of a job" : "a key that is known here";
    const comma = value.kind === "nothing" ? "A comma parts keys: a text with a comma stands in quotes. " : "";
    const remedy = `${comma}${unlike(key, names)}`;
    const params = { candidates: names };
    refuse(
      place,
      { kind: "nothing", line },
      { expected, received: key === "" ? "no name" : key, remedy, code: "unknown-field", params },
    );
  }
  return Object.fromEntries(read);
}

function writtenEntries(forms: Forms, value: object): readonly Branch[] {
  const members = new Map<string, unknown>(Object.entries(value));
  return Object.entries(forms).flatMap(([name, form]): Branch[] => {
    const member = members.get(name);
    return member === undefined ? [] : [[name, form.write(member)]];
  });
}

/** Keys that may each be left out, but for those required; a group without a value counts as left out. */
export function group<T extends object>(keys: Keys<T>, ...required: readonly (keyof T & string)[]): Group<T> {
  const forms: Forms = keys;
  const has = (value: object): value is T => required.every((key) => Object.hasOwn(value, key));
  return {
    keys,
    shape: { kind: "group", keys: forms, required },
    write: (value) => ({ group: writtenEntries(forms, value) }),
    read: (given, at) => {
      const node = opened(given);
      if (node.kind === "nothing") return null;
      const expected = `a group of ${Object.keys(forms).join(", ")}`;
      if (node.kind !== "group")
        return refuse(at, node, { expected, remedy: "Write it as keys with their values.", code: "wrong-kind" });
      const value = readEntries(forms, node.entries, at);
      const isWritten = (key: string): boolean => {
        const entry = entryOf(node, key);
        return entry !== undefined && opened(entry).kind !== "nothing";
      };
      for (const key of required) {
        if (isWritten(key)) continue;
        const place = inside(at, key);
        refuse(
          place,
          { kind: "nothing", line: node.line },
          { expected: `${key} in this group`, remedy: `Add ${key}.`, code: "missing" },
        );
      }
      return has(value) && (Object.keys(value).length > 0 || required.length > 0) ? value : null;
    },
  };
}

/** One of several forms; as data a group with a key for each, one of them there. */
export function shapes<T extends object>(ways: Keys<T>, which: (node: Node) => keyof T & string): Form<T> {
  const forms: Forms = ways;
  const asData = group<T>(ways);
  const isOne = (value: object): value is T => Object.keys(value).length === 1;
  return {
    shape: { kind: "shapes", ways: forms },
    write: (value) => {
      const [first] = writtenEntries(forms, value);
      return first?.[1] ?? { group: [] };
    },
    read: (node, at) => {
      if (opened(node).kind === "nothing") return null;
      if (node.kind === "data") {
        const read = asData.read(node, at);
        if (read === null || Object.keys(read).length === 1) return read;
        return refuse(at, node, {
          expected: `one of ${Object.keys(forms).join(", ")}`,
          remedy: "Give one of them.",
          code: "ambiguous",
        });
      }
      const way = which(node);
      const value = forms[way]?.read(node, at) ?? null;
      const read = Object.fromEntries(value === null ? [] : [[way, value]]);
      return isOne(read) ? read : null;
    },
  };
}
