import type { Tree } from "../formula/index.js";
import { joined, named, ONE, percentText } from "./scene.js";
import type { Change, Scene } from "./scene.js";

type Binary = Extract<Tree, { readonly left: Tree }>;

function change(rank: number, says: () => string, tree: Tree): Change {
  return { rank, says, tree };
}

/** A percentage brought in from the wrong base, or not at all. */
export function percentChanges({ op, left, right }: Binary, names: readonly string[], { worked }: Scene): Change[] {
  const text = (): string => percentText(names, worked.inputs);
  const total = names.map(named).reduce((a, b) => joined(a, "+", b));
  const added = (): Change => {
    const rightly = op === "÷" ? "dividing it out" : "taking it off";
    return change(1, () => `adds ${text()} instead of ${rightly}`, joined(left, "×", joined(ONE, "+", total)));
  };
  const off = (): Change =>
    change(
      1,
      () =>
        `takes ${text()} off instead of ${(right as Binary).op === "+" ? "dividing by what it was added to" : "dividing it out"}`,
      joined(left, "×", joined(ONE, "−", total)),
    );
  const out = (): Change =>
    change(
      1,
      () => `divides ${text()} out instead of ${(right as Binary).op === "+" ? "adding it" : "taking it off"}`,
      joined(left, "÷", joined(ONE, "−", total)),
    );
  const without = change(1, () => `leaves ${text()} out`, left);
  const aswell = [...worked.inputs].flatMap(([name, read]) =>
    read.what === "quantity" && read.unit.dimension === "loss" && !names.includes(name)
      ? [
          change(
            4,
            () => `divides ${percentText([name], worked.inputs)} out as well`,
            joined(joined(left, op, right), "÷", joined(ONE, "−", named(name))),
          ),
        ]
      : [],
  );
  if ((right as Binary).op === "−")
    return op === "÷" ? [added(), off(), without, ...aswell] : [added(), out(), without];
  if (op === "÷")
    return [off(), change(3, () => `adds ${text()} where it is to be divided by`, joined(left, "×", right)), without];
  const [first = "", second] = names;
  const after =
    second === undefined
      ? []
      : [
          change(
            1,
            () => `adds ${text()} one after the other instead of together`,
            names.reduce((tree, name) => joined(tree, "×", joined(ONE, "+", named(name))), left),
          ),
        ];
  return [
    out(),
    ...after,
    without,
    ...(second === undefined
      ? []
      : names.map((name) =>
          change(
            1,
            () => `leaves ${percentText([name], worked.inputs)} out`,
            joined(left, "×", joined(ONE, "+", named(name === first ? second : first))),
          ),
        )),
  ];
}
