import { namesIn } from "../formula/index.js";
import type { Tree } from "../formula/index.js";
import type { Isolated } from "./isolated.js";

interface Term {
  readonly negative: boolean;
  readonly tree: Tree;
}

/** A coefficient: terms added and taken away; none at all is nothing. */
type Terms = readonly Term[];

/** `times × name + rest`. */
interface Linear {
  readonly times: Terms;
  readonly rest: Terms;
}

interface Quotient {
  readonly over: Linear;
  readonly under: Linear;
}

const ONE: Tree = { op: "number", text: "1" };
const NOTHING: Terms = [];

function isOne(tree: Tree): boolean {
  return tree.op === "number" && tree.text === "1";
}

function multiplied(left: Tree, right: Tree): Tree {
  if (isOne(left)) return right;
  return isOne(right) ? left : { op: "×", left, right };
}

function negated(terms: Terms): Terms {
  return terms.map(({ negative, tree }) => ({ negative: !negative, tree }));
}

function product(a: Terms, b: Terms): Terms {
  return a.flatMap((x) => b.map((y) => ({ negative: x.negative !== y.negative, tree: multiplied(x.tree, y.tree) })));
}

/** Null where the name would stand squared. */
function linearProduct(a: Linear, b: Linear): Linear | null {
  if (a.times.length > 0 && b.times.length > 0) return null;
  const times = [...product(a.times, b.rest), ...product(a.rest, b.times)];
  return { times, rest: product(a.rest, b.rest) };
}

function linearSum(a: Linear, b: Linear): Linear {
  return { times: [...a.times, ...b.times], rest: [...a.rest, ...b.rest] };
}

function quotientOf(tree: Tree, name: string): Quotient | null {
  const single: Terms = [{ negative: false, tree: ONE }];
  const whole: Linear = { times: NOTHING, rest: single };
  if (!namesIn(tree).includes(name))
    return { over: { times: NOTHING, rest: [{ negative: false, tree }] }, under: whole };
  if (tree.op === "name") return { over: { times: single, rest: NOTHING }, under: whole };
  if (tree.op === "number" || "of" in tree) return null;
  const [a, b] = [quotientOf(tree.left, name), quotientOf(tree.right, name)];
  if (a === null || b === null) return null;
  if (tree.op === "×" || tree.op === "÷") {
    const [top, bottom] = tree.op === "×" ? [b.over, b.under] : [b.under, b.over];
    const [over, under] = [linearProduct(a.over, top), linearProduct(a.under, bottom)];
    return over && under && { over, under };
  }
  const [first, second] = [linearProduct(a.over, b.under), linearProduct(b.over, a.under)];
  const under = linearProduct(a.under, b.under);
  if (first === null || second === null || under === null) return null;
  const signed = tree.op === "+" ? second : { times: negated(second.times), rest: negated(second.rest) };
  return { over: linearSum(first, signed), under };
}

function sumOf(terms: Terms): Tree {
  const [first, ...others] = [...terms].sort((a, b) => Number(a.negative) - Number(b.negative));
  const start: Tree = first?.negative === false ? first.tree : { op: "number", text: "0" };
  const rest = first?.negative === false ? others : terms;
  return rest.reduce<Tree>((left, { negative, tree }) => ({ op: negative ? "−" : "+", left, right: tree }), start);
}

/** The equation `known = (a × name + b) ÷ (c × name + d)` solved for the name, which the tree holds on both sides. */
export function isolatedFromTwo(tree: Tree, name: string, known: Tree): Isolated {
  const quotient = quotientOf(tree, name);
  if (quotient === null) return { ok: false, why: "it stands there more than once, and not only in simple proportion" };
  const { over, under } = quotient;
  const side: Terms = [{ negative: false, tree: known }];
  const top = [...product(under.rest, side), ...negated(over.rest)];
  const bottom = [...over.times, ...negated(product(under.times, side))];
  const turned = [top, bottom].every((terms) => terms.every(({ negative }) => negative));
  const [left, right] = turned ? [sumOf(negated(top)), sumOf(negated(bottom))] : [sumOf(top), sumOf(bottom)];
  return { ok: true, tree: { op: "÷", left, right } };
}
