import type { Tree } from "./form.js";

const LINE = 100;
// What another reader of YAML takes for a number, a date, a truth value, nothing, or a key of its own.
const READS_OTHERWISE =
  /^(?:[-+]?\.?\d[\w.:+-]*|\d{4}-\d\d?-\d\d?[Tt ].*|[-+]?\.(?:inf|nan)|~|=|<<|null|true|false|yes|no|on|off|y|n)$/iu;
const HAS_A_MARK =
  /[,[\]{}\t\n\r\u0085\u2028\u2029]| #|: |:$|^[-?:@`%&*!|>'"#]|^\.\.\.|^\s|\s$|[\p{Cc}\p{Cs}\ufeff\ufffe\uffff]/u;
const NOT_IN_JSON = /[\u007f-\u009f\u2028\u2029\ufeff\ufffe\uffff]/gu;

/** A text as a value or a key, in quotes where it would be read as something else. */
export function scalar(text: string): string {
  if (text !== "" && !READS_OTHERWISE.test(text) && !HAS_A_MARK.test(text)) return text;
  const escaped = (mark: string): string => `\\u${mark.charCodeAt(0).toString(16).padStart(4, "0")}`;
  return JSON.stringify(text).replace(NOT_IN_JSON, escaped);
}

function leaf(tree: string | number | boolean): string {
  if (typeof tree === "boolean") return tree ? "yes" : "no";
  return typeof tree === "number" ? String(tree) : scalar(tree);
}

/** On one line. */
export function flowText(tree: Tree): string {
  if (typeof tree !== "object") return leaf(tree);
  if ("list" in tree) return `[${tree.list.map(flowText).join(", ")}]`;
  const entries = tree.group.map(([key, value]) => `${scalar(key)}: ${flowText(value)}`);
  return entries.length === 0 ? "{}" : `{ ${entries.join(", ")} }`;
}

function isEmpty(tree: Tree): boolean {
  return typeof tree === "object" && "group" in tree && tree.group.length === 0;
}

/** The lines below a key or a dash; null where it stands behind it on the same line. */
function below(tree: Tree, indent: string): readonly string[] | null {
  if (typeof tree !== "object" || isEmpty(tree)) return null;
  if ("group" in tree) return tree.group.flatMap(([key, value]) => entryLines(key, value, indent));
  return tree.list.flatMap((item) => itemLines(item, indent));
}

function entryLines(key: string, value: Tree, indent: string): readonly string[] {
  if (isEmpty(value)) return [`${indent}${scalar(key)}:`];
  const line = `${indent}${scalar(key)}: ${flowText(value)}`;
  const under = below(value, `${indent}  `);
  return under === null || (line.length <= LINE && indent !== "") || line.length <= LINE * 0.8
    ? [line]
    : [`${indent}${scalar(key)}:`, ...under];
}

function itemLines(item: Tree, indent: string): readonly string[] {
  const line = `${indent}- ${flowText(item)}`;
  const under = below(item, `${indent}  `);
  if (under === null || line.length <= LINE) return [line];
  const [first = "", ...others] = under;
  return [`${indent}- ${first.trimStart()}`, ...others];
}

/** A group of keys as lines of YAML. */
export function yamlText(tree: Tree): string {
  const lines = below(tree, "") ?? [];
  return lines.length === 0 ? "{}\n" : `${lines.join("\n")}\n`;
}
