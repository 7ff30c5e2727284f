import { powersOf } from "../quantity/index.js";
import type { Declared } from "./declaration.js";
import { countsInUnit } from "./reckoned.js";
import type { Tree } from "./tree.js";

export type Powers = readonly [length: number, mass: number];

const NONE: Powers = [0, 0];

function same(a: Powers, b: Powers): boolean {
  return a[0] === b[0] && a[1] === b[1];
}

function powersIn(tree: Tree, known: ReadonlyMap<string, Powers>): Powers {
  if (tree.op === "number") return NONE;
  if (tree.op === "name") {
    const powers = known.get(tree.name);
    if (powers === undefined) throw new ReferenceError(`the formula has no ${tree.name}`);
    return powers;
  }
  if ("of" in tree) {
    const [length, mass] = powersIn(tree.of, known);
    return tree.op === "√" ? [length / 2, mass / 2] : [length, mass];
  }
  const [a, b] = [powersIn(tree.left, known), powersIn(tree.right, known)];
  if (tree.op === "×") return [a[0] + b[0], a[1] + b[1]];
  if (tree.op === "÷") return [a[0] - b[0], a[1] - b[1]];
  if (!same(a, b)) throw new RangeError(`${tree.op} joins two kinds: ${String(a)} and ${String(b)}`);
  return a;
}

/** The powers of length and mass of every input and line; a line that adds unlike things is refused. */
export function dimensionsOf(declared: Declared): ReadonlyMap<string, Powers> {
  const known = new Map<string, Powers>();
  for (const [name, { dimension, what, reckonedIn }] of Object.entries(declared.inputs)) {
    if (what === "unit") {
      known.set(`${name}.length`, [1, 0]);
      known.set(`${name}.mass`, [0, 1]);
    } else known.set(name, reckonedIn === undefined ? powersOf(dimension) : NONE);
  }
  for (const { name, tree } of declared.lines) known.set(name, powersIn(tree, known));
  const last = known.get(declared.lines.at(-1)?.name ?? "") ?? NONE;
  const wanted = countsInUnit(declared) ? NONE : powersOf(declared.result.dimension);
  if (!same(last, wanted)) throw new RangeError(`${declared.name} gives ${String(last)}, declared ${String(wanted)}`);
  return known;
}
