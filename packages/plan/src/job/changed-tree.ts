import type { FaultPath } from "./fault.js";
import type { Branch, Form, Tree } from "./form.js";
import type { Node } from "./node.js";
import { treeOf } from "./written-value.js";
import type { WrittenValue } from "./written-value.js";

/** What is to stand at one place of a job file; null takes the key out. */
export interface JobChange {
  readonly path: FaultPath;
  readonly value: WrittenValue | null;
}

const inName = (key: string): string => key.trim().replace(/\s+/gu, " ").normalize("NFC");

/** What a file says, unread. */
export function treeOfNode(node: Node): Tree {
  if (node.kind === "text") return treeOf(node.text);
  if (node.kind === "list") return { list: node.items.map(treeOfNode) };
  if (node.kind === "group") return { group: node.entries.map(({ key, value }) => [inName(key), treeOfNode(value)]) };
  return "";
}

/** The keys that may stand here, in the order in which they are written. */
function keysOf(form: Form<unknown> | null): readonly string[] {
  if (form?.shape.kind === "group") return Object.keys(form.shape.keys);
  return form?.shape.kind === "either" ? form.shape.ways.flatMap(keysOf) : [];
}

function formIn(form: Form<unknown> | null, step: string | number): Form<unknown> | null {
  const shape = form?.shape;
  if (shape?.kind === "group") return shape.keys[step] ?? null;
  if (shape?.kind === "list" || shape?.kind === "byName") return shape.of;
  if (shape?.kind !== "either") return null;
  return shape.ways.reduce<Form<unknown> | null>((found, way) => found ?? formIn(way, step), null);
}

export function groupIn(tree: Tree | undefined): readonly Branch[] | null {
  return typeof tree === "object" && "group" in tree ? tree.group : null;
}

function listIn(tree: Tree | undefined): readonly Tree[] | null {
  return typeof tree === "object" && "list" in tree ? tree.list : null;
}

/** A key anew stands where the form has it, before the first that comes after it. */
function placeOf(name: string, group: readonly Branch[], form: Form<unknown> | null): number {
  const order = keysOf(form);
  const own = order.indexOf(name);
  const later = group.findIndex(([key]) => own >= 0 && order.indexOf(key) > own);
  return later < 0 ? group.length : later;
}

/** With a value put in, and the groups and lists made that are not there on the way. */
function withValue(tree: Tree | undefined, form: Form<unknown> | null, path: FaultPath, value: Tree): Tree {
  const [step, ...rest] = path;
  if (step === undefined) return value;
  const [group, list] = [groupIn(tree), listIn(tree)];
  if (typeof step === "number" && group === null) {
    const items = list ?? [];
    const at = Math.min(step, items.length);
    return {
      list: [...items.slice(0, at), withValue(items[at], formIn(form, step), rest, value), ...items.slice(at + 1)],
    };
  }
  const [name, branches] = [inName(String(step)), group ?? []];
  const at = branches.findIndex(([key]) => key === name);
  const place = at < 0 ? placeOf(name, branches, form) : at;
  const branch: Branch = [name, withValue(branches[at]?.[1], formIn(form, name), rest, value)];
  return { group: [...branches.slice(0, place), branch, ...branches.slice(at < 0 ? place : place + 1)] };
}

/** Without a key, and without every group or list that is left with nothing; undefined where all is gone. */
function withoutValue(tree: Tree, path: FaultPath): Tree | undefined {
  const [step, ...rest] = path;
  if (step === undefined) return undefined;
  const [group, list] = [groupIn(tree), listIn(tree)];
  if (group !== null) {
    const left = group.flatMap(([key, value]): readonly Branch[] => {
      if (key !== inName(String(step))) return [[key, value]];
      const inside = withoutValue(value, rest);
      return inside === undefined ? [] : [[key, inside]];
    });
    return left.length === 0 ? undefined : { group: left };
  }
  if (list === null) return tree;
  const left = list.flatMap((value, at) => {
    const inside = at === step ? withoutValue(value, rest) : value;
    return inside === undefined ? [] : [inside];
  });
  return left.length === 0 ? undefined : { list: left };
}

/** What a file says after some changes, one after the other. */
export function changedTree(
  was: readonly Branch[],
  form: Form<unknown>,
  changes: readonly JobChange[],
): readonly Branch[] {
  const now = changes.reduce<Tree>(
    (so, { path, value }) =>
      value === null ? (withoutValue(so, path) ?? { group: [] }) : withValue(so, form, path, treeOf(value)),
    { group: was },
  );
  return groupIn(now) ?? [];
}
