import type { Node } from "./node.js";
import type { Tree } from "./form.js";
import { flowText } from "./yaml-lines.js";
import { yamlNode } from "./yaml-node.js";

/** What stands in a job file, unread: a text, a list, or a group of keys. */
export type WrittenValue = string | readonly WrittenValue[] | { readonly [key: string]: WrittenValue };

function valueOf(node: Node): WrittenValue {
  switch (node.kind) {
    case "text":
      return node.text;
    case "list":
      return node.items.map(valueOf);
    case "group":
      return Object.fromEntries(node.entries.map(({ key, value }) => [key, valueOf(value)]));
    case "nothing":
    case "data":
      return "";
  }
}

const isList = (value: WrittenValue): value is readonly WrittenValue[] => Array.isArray(value);

/** Whether these are the digits of a number, which every reader of YAML takes for it. */
const isNumber = (text: string): boolean => Number.isFinite(Number(text)) && String(Number(text)) === text;

/** A value unread, as it is written. */
export function treeOf(value: WrittenValue): Tree {
  if (typeof value === "string") return isNumber(value) ? Number(value) : value;
  if (isList(value)) return { list: value.map(treeOf) };
  return { group: Object.entries(value).map(([key, one]) => [key, treeOf(one)]) };
}

/**
 * What stands in the text of a job, or of one value of it, before any of it is read: for the fields of a program.
 *
 * @param text YAML; a list may stand without its brackets, `24 natural, 6 indigo`
 * @returns texts, lists and groups; null where it is no YAML
 * @example writtenValue("24 natural, { repeat: 3, of: [6 indigo] }") // ["24 natural", { repeat: "3", of: ["6 indigo"] }]
 */
export function writtenValue(text: string): WrittenValue | null {
  const { node, faults } = yamlNode(text);
  const isWhole = faults.length === 0 && (node.kind !== "text" || !node.text.includes(", "));
  if (isWhole) return valueOf(node);
  const asList = yamlNode(`[${text}]`);
  return asList.faults.length > 0 ? null : valueOf(asList.node);
}

/** A value on one line, as `writtenValue` reads it: a list without its brackets. */
export function writtenText(value: WrittenValue): string {
  if (typeof value === "string") return value;
  if (!isList(value) || value.length < 2) return flowText(treeOf(value));
  return value.map((one) => flowText(treeOf(one))).join(", ");
}
