import type { Read, Tree } from "../formula/index.js";
import { inWords } from "../working/index.js";
import { joined, named, ONE, percentagesIn } from "./scene.js";
import type { Change } from "./scene.js";

/** The name of the loss in `1 − loss`; null for any other tree. */
function lossIn(tree: Tree, inputs: ReadonlyMap<string, Read>): string | null {
  return tree.op === "−" ? (percentagesIn(tree, inputs)[0] ?? null) : null;
}

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

/** The tree with what is added to a piece left out of the losses: its hems put on after they are divided out. */
function addedAfter(tree: Tree, inputs: ReadonlyMap<string, Read>, losses: readonly string[]): Tree {
  if (tree.op === "+") {
    const left = losses.reduce((of, loss) => joined(of, "÷", joined(ONE, "−", named(loss))), tree.left);
    return joined(left, "+", tree.right);
  }
  if (!("left" in tree)) return tree;
  const bare = tree.op === "÷" && lossIn(tree.right, inputs) !== null;
  if (bare) return addedAfter(tree.left, inputs, losses);
  const left = addedAfter(tree.left, inputs, losses);
  return left === tree.left
    ? joined(left, tree.op, addedAfter(tree.right, inputs, losses))
    : joined(left, tree.op, tree.right);
}

/** Puts the change at the deepest sum below the first loss, and leaves what stands above the losses alone. */
function belowLosses(tree: Tree, inputs: ReadonlyMap<string, Read>, losses: readonly string[]): Tree {
  if (!("left" in tree)) return tree;
  if (tree.op === "÷" && lossIn(tree.right, inputs) !== null) return addedAfter(tree, inputs, losses);
  const left = belowLosses(tree.left, inputs, losses);
  return joined(left, tree.op, left === tree.left ? belowLosses(tree.right, inputs, losses) : tree.right);
}

/** The slips that treat several percentages as one: all added on, or summed and then divided out or added. */
export function percentageSlips(tree: Tree, inputs: ReadonlyMap<string, Read>): readonly Change[] {
  const losses = [...new Set(lossesIn(tree, inputs))];
  const [first, ...others] = losses;
  if (first === undefined) return [];
  const after: Change = {
    rank: 2,
    says: () => `puts on what is added to each piece only after ${losses.map(inWords).join(" and ")}`,
    tree: belowLosses(tree, inputs, losses),
  };
  if (others.length === 0) return [after];
  const text = losses.map(inWords).join(" and ");
  const summed = others.reduce<Tree>((left, loss) => joined(left, "+", named(loss)), named(first));
  const atFirst = (put: (of: Tree) => Tree): Tree =>
    withLosses(tree, inputs, (of, loss) => (loss === first ? put(of) : of));
  const slip = (says: string, changed: Tree, convention = false): Change => ({
    ...{ rank: 1, says: () => says, tree: changed, convention },
  });
  return [
    slip(
      `adds each of ${text} instead of dividing it out`,
      withLosses(tree, inputs, (left, loss) => joined(left, "×", joined(ONE, "+", named(loss)))),
    ),
    slip(
      `adds the percentages of ${text} together and divides once`,
      atFirst((left) => joined(left, "÷", joined(ONE, "−", summed))),
    ),
    slip(
      `adds the percentages of ${text} together and adds them on`,
      atFirst((left) => joined(left, "×", joined(ONE, "+", summed))),
      true,
    ),
    after,
  ];
}
