import { writtenOut } from "../formula/index.js";
import type { Tree } from "../formula/index.js";

/** What the names of a formula stand for: of each its number and unit, of a list those of each member. */
export type Amounts = Readonly<Record<string, readonly string[]>>;

/** What a name stands for; "counts[1]" is the second member of a list. */
export function amountsAt(amounts: Amounts, name: string): readonly string[] {
  const [, list = name, at] = /^(.*)\[(\d+)\]$/u.exec(name) ?? [];
  const all = amounts[list] ?? [];
  return at === undefined ? all : all.slice(Number(at), Number(at) + 1);
}

/** A line with the sum of a list written out over its members. */
export function inMembers(tree: Tree, amounts: Amounts): Tree {
  const lists = Object.entries(amounts).filter(([, { length }]) => length !== 1);
  return writtenOut(tree, new Map(lists.map(([name, { length }]) => [name, length])));
}
