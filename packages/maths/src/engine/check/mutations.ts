import type { Read, Tree } from "../formula/index.js";
import { formulaStyle, treeText } from "../formula/index.js";
import { inWords } from "../working/index.js";

/** A changed formula and the sentence that tells the change: "a sum that …". */
export interface Mutation {
  readonly says: string;
  readonly tree: Tree;
}

type Binary = Extract<Tree, { readonly left: Tree }>;

const ONE: Tree = { op: "number", text: "1" };

function words(tree: Tree): string {
  return treeText(tree, formulaStyle(inWords));
}

/** The name of the loss in `1 − loss`; null for any other tree. */
export function lossIn(tree: Tree, inputs: ReadonlyMap<string, Read>): string | null {
  const form = tree.op === "−" && tree.left.op === "number" && tree.left.text === "1" && tree.right.op === "name";
  const name = form ? (tree.right as { readonly name: string }).name : "";
  const read = inputs.get(name);
  return read?.what === "quantity" && read.unit.dimension === "loss" ? name : null;
}

function percentText(name: string, inputs: ReadonlyMap<string, Read>): string {
  const read = inputs.get(name);
  return read?.what === "quantity" ? `the ${read.value.toString()} % of ${inWords(name)}` : inWords(name);
}

function divisionSlips(tree: Binary, inputs: ReadonlyMap<string, Read>): Mutation[] {
  const { left, right } = tree;
  const loss = lossIn(right, inputs);
  if (loss === null) {
    return [{ says: `multiplies by ${words(right)} where it should divide`, tree: { op: "×", left, right } }];
  }
  const percent = percentText(loss, inputs);
  const added: Tree = { op: "+", left: ONE, right: { op: "name", name: loss } };
  return [
    { says: `adds ${percent} instead of dividing it out`, tree: { op: "×", left, right: added } },
    { says: `takes ${percent} off instead of dividing it out`, tree: { op: "×", left, right } },
    { says: `leaves ${percent} out`, tree: left },
  ];
}

function productSlips(tree: Binary): Mutation[] {
  const { left, right } = tree;
  const slips: Mutation[] = [
    { says: `divides by ${words(right)} where it should multiply`, tree: { op: "÷", left, right } },
    { says: `leaves out the factor ${words(left)}`, tree: right },
    { says: `leaves out the factor ${words(right)}`, tree: left },
  ];
  if (right.op === "+" || right.op === "−") {
    const only: Tree = { op: "×", left, right: right.left };
    const open: Tree = { op: right.op, left: only, right: right.right };
    slips.push({
      says: `multiplies ${words(right.left)} by ${words(left)}, but not ${words(right.right)}`,
      tree: open,
    });
  }
  return slips;
}

/** What can go wrong at the top of this tree, without looking inside. */
function slipsAt(tree: Tree, inputs: ReadonlyMap<string, Read>): Mutation[] {
  switch (tree.op) {
    case "÷":
      return divisionSlips(tree, inputs);
    case "×":
      return productSlips(tree);
    case "+":
      return [
        { says: `leaves out ${words(tree.left)}`, tree: tree.right },
        { says: `leaves out ${words(tree.right)}`, tree: tree.left },
        { says: `takes away ${words(tree.right)} instead of adding it`, tree: { ...tree, op: "−" } },
      ];
    case "−":
      return [
        { says: `forgets to take away ${words(tree.right)}`, tree: tree.left },
        { says: `adds ${words(tree.right)} instead of taking it away`, tree: { ...tree, op: "+" } },
      ];
    case "√":
      return [{ says: `forgets the square root of ${words(tree.of)}`, tree: tree.of }];
    case "roundUp":
      return [
        { says: "rounds down instead of up", tree: { op: "roundDown", of: tree.of } },
        { says: "leaves the rounding out", tree: tree.of },
      ];
    case "roundDown":
    case "nearest":
      return [
        { says: "rounds up", tree: { op: "roundUp", of: tree.of } },
        { says: "leaves the rounding out", tree: tree.of },
      ];
    case "number":
    case "name":
    case "Σ":
      return [];
  }
}

/** Every single slip in a formula: the slips at each of its places, the rest left as it is. */
export function mutationsOf(tree: Tree, inputs: ReadonlyMap<string, Read>): readonly Mutation[] {
  const inside = (part: Tree, put: (changed: Tree) => Tree): Mutation[] =>
    mutationsOf(part, inputs).map(({ says, tree: changed }) => ({ says, tree: put(changed) }));
  const own = slipsAt(tree, inputs);
  if (tree.op === "number" || tree.op === "name" || lossIn(tree, inputs) !== null) return [];
  if ("of" in tree) return [...own, ...inside(tree.of, (of) => ({ ...tree, of }))];
  const { left, right } = tree;
  return [
    ...own,
    ...inside(left, (changed) => ({ ...tree, left: changed })),
    ...inside(right, (changed) => ({ ...tree, right: changed })),
  ];
}
