import { equal } from "@thrum/maths";
import type { Quantity } from "@thrum/maths";
import { printable } from "../text/printable.js";

/** What a form reads: a part of a file with its line, or of the data of a program. */
export type Node =
  | { readonly kind: "nothing"; readonly line?: number | undefined }
  | { readonly kind: "text"; readonly text: string; readonly line: number }
  | { readonly kind: "list"; readonly items: readonly Node[]; readonly line?: number | undefined }
  | { readonly kind: "group"; readonly entries: readonly Entry[]; readonly line?: number | undefined }
  | { readonly kind: "data"; readonly value: unknown; readonly line?: undefined };

export interface Entry {
  readonly key: string;
  readonly value: Node;
  readonly line?: number | undefined;
}

/** Whether this is a genuine quantity: a copy of one has lost its unit. */
export function isQuantity(value: unknown): value is Quantity<string> {
  const looks = (one: unknown): one is Quantity<string> =>
    typeof one === "object" && one !== null && "dimension" in one;
  if (!looks(value)) return false;
  try {
    return equal(value, value);
  } catch {
    return false;
  }
}

/** Lists and groups of data opened one level, so that a form reads them as it reads those of a file. */
export function opened(node: Node): Node {
  if (node.kind !== "data") return node;
  const { value } = node;
  const data = (one: unknown): Node => ({ kind: "data", value: one });
  if (value === undefined) return { kind: "nothing" };
  if (Array.isArray(value)) return { kind: "list", items: value.map(data) };
  if (typeof value !== "object" || value === null || isQuantity(value)) return node;
  const entries: readonly (readonly [string, unknown])[] = Object.entries(value);
  return { kind: "group", entries: entries.map(([key, one]) => ({ key, value: data(one) })) };
}

export function entryOf(node: Node, key: string): Node | undefined {
  const inside = opened(node);
  return inside.kind === "group" ? inside.entries.find((entry) => entry.key === key)?.value : undefined;
}

/** The text that stands there; null for a list, a group or data. */
export function textOf(node: Node): string | null {
  return node.kind === "text" ? node.text : null;
}

/** What stood there, in a few words. */
export function receivedText(given: Node): string {
  const node = opened(given);
  switch (node.kind) {
    case "nothing":
      return "nothing";
    case "text":
      return `"${printable(node.text)}"`;
    case "list":
      return node.items.length === 0 ? "an empty list" : `a list of ${String(node.items.length)}`;
    case "group":
      return `a group of ${
        node.entries
          .slice(0, 4)
          .map(({ key }) => printable(key))
          .join(", ") || "no keys"
      }`;
    case "data":
      if (isQuantity(node.value)) return printable(String(node.value));
      if (node.value === null) return "nothing";
      if (typeof node.value === "symbol") return node.value.description ?? "a symbol";
      if (typeof node.value === "string") return `"${printable(node.value)}"`;
      return typeof node.value === "number" || typeof node.value === "boolean" ? String(node.value) : "other data";
  }
}
