import type { Read, Tree } from "../formula/index.js";
import { inWords } from "../working/index.js";
import { percentageSlips } from "./percentages.js";
import { joined, named, ONE, percentagesIn } from "./scene.js";

/** The same sum by the other convention about what a percentage is measured on. */
export interface Convention {
  readonly rule: "adding" | "dividing";
  readonly tree: Tree;
}

const OTHER_WAY = { "×": "÷", "÷": "×" } as const;
const OTHER_SIGN = { "+": "−", "−": "+" } as const;

/** The tree with every percentage measured on the other length: `÷ (1 − loss)` becomes `× (1 + loss)`, and so on. */
function onOtherLength(tree: Tree, inputs: ReadonlyMap<string, Read>, met: Set<string>): Tree {
  if (tree.op === "number" || tree.op === "name") return tree;
  if ("of" in tree) return { ...tree, of: onOtherLength(tree.of, inputs, met) };
  const { op, right } = tree;
  const left = onOtherLength(tree.left, inputs, met);
  const percentages = percentagesIn(right, inputs);
  if ((op !== "×" && op !== "÷") || (right.op !== "+" && right.op !== "−") || percentages.length === 0)
    return { ...tree, left, right: onOtherLength(right, inputs, met) };
  met.add(right.op);
  const turned = (of: Tree, name: string): Tree =>
    joined(of, OTHER_WAY[op], joined(ONE, OTHER_SIGN[right.op as "+" | "−"], named(name)));
  return percentages.reduce(turned, left);
}

/** How the sum goes for one who measures the percentages on the other length; none where the formula has none. */
export function conventionsOf(tree: Tree, inputs: ReadonlyMap<string, Read>): readonly Convention[] {
  const met = new Set<string>();
  const turned = onOtherLength(tree, inputs, met);
  if (met.size === 0) return [];
  if (!met.has("−")) return [{ rule: "dividing", tree: turned }];
  const summed = percentageSlips(tree, inputs).filter(({ convention }) => convention === true);
  return [turned, ...summed.map((one) => one.tree)].map((one) => ({ rule: "adding", tree: one }));
}

/** What to ask where a question states no base. */
export function baseQuestion(inputs: ReadonlyMap<string, Read>): string {
  const names = [...inputs].flatMap(([name, read]) =>
    read.what === "quantity" && (read.unit.dimension === "loss" || read.unit.dimension === "addition") ? [name] : [],
  );
  const each = names.length > 1 ? "were the percentages of" : "was the percentage of";
  return `On which length ${each} ${names.map(inWords).join(" and ")} measured: the one before, or the one after?`;
}
