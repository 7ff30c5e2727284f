import type { Tree } from "../formula/index.js";
import { inWords } from "../working/index.js";
import { percentChanges } from "./percent-changes.js";
import { joined, named, percentagesIn, words } from "./scene.js";
import type { Change, Scene } from "./scene.js";

type Binary = Extract<Tree, { readonly left: Tree }>;

function change(rank: number, says: () => string, tree: Tree): Change {
  return { rank, says, tree };
}

/** A bracket multiplied or divided at one side only. */
function bracketChanges({ op, left, right }: Binary, { opened }: Scene): Change[] {
  const does = op === "×" ? "multiplies" : "divides";
  const half = (bracket: Tree, by: Tree, put: (part: Tree) => Tree): Change[] =>
    bracket.op === "+" || bracket.op === "−"
      ? [
          change(
            2,
            () => `${does} ${words(bracket.left)} by ${words(by)}, but not ${words(bracket.right)}`,
            joined(put(bracket.left), bracket.op, bracket.right),
          ),
          change(
            2,
            () => `${does} ${words(bracket.right)} by ${words(by)}, but not ${words(bracket.left)}`,
            joined(bracket.left, bracket.op, put(bracket.right)),
          ),
        ]
      : [];
  return [
    ...half(opened(left), right, (part) => joined(part, op, right)),
    ...(op === "×" ? half(opened(right), left, (part) => joined(left, op, part)) : []),
  ];
}

function quotientChanges(tree: Binary, scene: Scene): Change[] {
  const { left, right } = tree;
  return [
    change(3, () => `multiplies by ${words(right)} where it should divide`, joined(left, "×", right)),
    change(2, () => `leaves out dividing by ${words(right)}`, left),
    change(3, () => `divides by ${words(right)} twice`, joined(tree, "÷", right)),
    change(3, () => `divides ${words(right)} by ${words(left)}, the wrong way round`, joined(right, "÷", left)),
    ...bracketChanges(tree, scene),
  ];
}

function productChanges(tree: Binary, scene: Scene): Change[] {
  const { left, right } = tree;
  return [
    change(3, () => `divides by ${words(right)} where it should multiply`, joined(left, "÷", right)),
    change(2, () => `leaves out the factor ${words(left)}`, right),
    change(2, () => `leaves out the factor ${words(right)}`, left),
    change(3, () => `multiplies by ${words(right)} twice`, joined(tree, "×", right)),
    change(4, () => `multiplies by ${words(left)} twice`, joined(tree, "×", left)),
    ...bracketChanges(tree, scene),
  ];
}

function sumChanges(tree: Binary, { worked }: Scene): Change[] {
  const { left, right } = tree;
  const changes = [
    change(2, () => `leaves out ${words(left)}`, right),
    change(2, () => `leaves out ${words(right)}`, left),
    change(3, () => `takes away ${words(right)} instead of adding it`, joined(left, "−", right)),
    change(3, () => `counts ${words(right)} twice`, joined(tree, "+", right)),
    change(4, () => `counts ${words(left)} twice`, joined(tree, "+", left)),
  ];
  for (const [name, { what }] of Object.entries(worked.declared.inputs)) {
    if (what !== "whole") continue;
    const each = (): string => `counts ${words(right)} once for each of the ${inWords(name)}`;
    changes.push(change(2, each, joined(left, "+", joined(named(name), "×", right))));
  }
  return changes;
}

const ROUNDINGS = { roundUp: "up", roundDown: "down", nearest: "to the nearest" } as const;

/** What can go wrong at the top of this tree, without looking inside. */
function changesAt(tree: Tree, scene: Scene): Change[] {
  if (tree.op === "number" || tree.op === "name" || tree.op === "Σ") return [];
  if (tree.op === "√") return [change(1, () => `forgets the square root of ${words(tree.of)}`, tree.of)];
  if (tree.op === "orNothing") return [change(3, () => "counts less than nothing", tree.of)];
  if ("of" in tree) {
    const { op, of } = tree;
    const others = (["roundUp", "roundDown", "nearest"] as const).filter((other) => other !== op);
    return [
      ...others.map((other) =>
        change(1, () => `rounds ${ROUNDINGS[other]} instead of ${ROUNDINGS[op]}`, { op: other, of }),
      ),
      change(1, () => "leaves the rounding out", of),
    ];
  }
  if (tree.op === "+") return sumChanges(tree, scene);
  if (tree.op === "−") {
    const { left, right } = tree;
    return [
      change(2, () => `forgets to take away ${words(right)}`, left),
      change(3, () => `adds ${words(right)} instead of taking it away`, joined(left, "+", right)),
      change(3, () => `takes ${words(right)} away twice`, joined(tree, "−", right)),
    ];
  }
  const names = percentagesIn(tree.right, scene.worked.inputs);
  if (names.length > 0) return percentChanges(tree, names, scene);
  return tree.op === "÷" ? quotientChanges(tree, scene) : productChanges(tree, scene);
}

/** Every single change of a tree: those at each of its places, the rest left as it is. */
export function changesOf(tree: Tree, scene: Scene): readonly Change[] {
  if (tree.op === "number" || tree.op === "name" || percentagesIn(tree, scene.worked.inputs).length > 0) return [];
  const inside = (part: Tree, put: (changed: Tree) => Tree): Change[] =>
    changesOf(part, scene).map((one) => ({ ...one, tree: put(one.tree) }));
  const own = changesAt(tree, scene);
  if ("of" in tree) return [...own, ...inside(tree.of, (of) => ({ ...tree, of }))];
  const { op, left, right } = tree;
  return [
    ...own,
    ...inside(left, (part) => joined(part, op, right)),
    ...inside(right, (part) => joined(left, op, part)),
  ];
}
