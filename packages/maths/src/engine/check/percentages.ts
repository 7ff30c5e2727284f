import type { Read, Tree } from "../formula/index.js";
import { inWords } from "../working/index.js";
import { lossIn } from "./mutations.js";
import type { Mutation } from "./mutations.js";

/** The losses divided out anywhere in a tree. */
function lossesIn(tree: Tree, inputs: ReadonlyMap<string, Read>): readonly string[] {
  if (tree.op === "number" || tree.op === "name") return [];
  if ("of" in tree) return lossesIn(tree.of, inputs);
  const own = tree.op === "÷" ? lossIn(tree.right, inputs) : null;
  return [...lossesIn(tree.left, inputs), ...lossesIn(tree.right, inputs), ...(own === null ? [] : [own])];
}

/** The tree with each `÷ (1 − loss)` rewritten, innermost first. */
function withLosses(tree: Tree, inputs: ReadonlyMap<string, Read>, rewrite: (of: Tree, loss: string) => Tree): Tree {
  if (tree.op === "number" || tree.op === "name") return tree;
  if ("of" in tree) return { ...tree, of: withLosses(tree.of, inputs, rewrite) };
  const left = withLosses(tree.left, inputs, rewrite);
  const loss = tree.op === "÷" ? lossIn(tree.right, inputs) : null;
  return loss === null ? { ...tree, left, right: withLosses(tree.right, inputs, rewrite) } : rewrite(left, loss);
}

/** The slips that treat several percentages as one: all added on, or summed and then divided out or added. */
export function percentageSlips(tree: Tree, inputs: ReadonlyMap<string, Read>): readonly Mutation[] {
  const losses = [...new Set(lossesIn(tree, inputs))];
  const [first, ...others] = losses;
  if (first === undefined || others.length === 0) return [];
  const named = losses.map(inWords).join(" and ");
  const name = (loss: string): Tree => ({ op: "name", name: loss });
  const one: Tree = { op: "number", text: "1" };
  const summed = others.reduce<Tree>((left, loss) => ({ op: "+", left, right: name(loss) }), name(first));
  const atFirst = (put: (of: Tree) => Tree): Tree =>
    withLosses(tree, inputs, (of, loss) => (loss === first ? put(of) : of));
  return [
    {
      says: `adds each of ${named} instead of dividing it out`,
      tree: withLosses(tree, inputs, (left, loss) => ({
        op: "×",
        left,
        right: { op: "+", left: one, right: name(loss) },
      })),
    },
    {
      says: `adds the percentages of ${named} together and divides once`,
      tree: atFirst((left) => ({ op: "÷", left, right: { op: "−", left: one, right: summed } })),
    },
    {
      says: `adds the percentages of ${named} together and adds them on`,
      tree: atFirst((left) => ({ op: "×", left, right: { op: "+", left: one, right: summed } })),
    },
  ];
}
