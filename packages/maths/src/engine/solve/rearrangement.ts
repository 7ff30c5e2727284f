import { namesIn, withNames } from "../formula/index.js";
import type { Declared, Line, Tree } from "../formula/index.js";
import { isolated } from "./isolated.js";

/** A formula turned round: its lines from the answer back to one input, or why there are none. */
export type Rearrangement =
  | {
      readonly ok: true;
      /** The name under which the answer now goes in. */ readonly answer: string;
      readonly lines: readonly Line[];
    }
  | { readonly ok: false; readonly why: string };

/** Every line in which the wanted input counts. */
function touchedBy(wanted: string, lines: readonly Line[]): ReadonlyMap<string, Line> {
  const touched = new Map<string, Line>();
  for (const line of lines) {
    if (namesIn(line.tree).some((name) => name === wanted || touched.has(name))) touched.set(line.name, line);
  }
  return touched;
}

function writtenInto(tree: Tree, touched: ReadonlyMap<string, Line>): Tree {
  return withNames(tree, (name) => {
    const line = touched.get(name);
    return line === undefined ? null : writtenInto(line.tree, touched);
  });
}

/** The lines that others need, in their own order. */
function needed(lines: readonly Line[], turned: readonly Line[]): readonly Line[] {
  const names = new Set(turned.flatMap(({ tree }) => namesIn(tree)));
  const kept: Line[] = [];
  for (const line of [...lines].reverse()) {
    if (!names.has(line.name)) continue;
    kept.unshift(line);
    for (const name of namesIn(line.tree)) names.add(name);
  }
  return kept;
}

/**
 * A formula solved for one of its inputs.
 *
 * @param declared the declaration of a calculation
 * @param wanted the input to solve for
 */
export function rearrangement({ inputs, lines }: Declared, wanted: string): Rearrangement {
  const input = Object.hasOwn(inputs, wanted) ? inputs[wanted] : undefined;
  const answer = lines.at(-1)?.name ?? "";
  const refused = (why: string): Rearrangement => ({
    ok: false,
    why: `${wanted} cannot be worked out from ${answer}: ${why}`,
  });
  if (input === undefined) return refused("the formula has no such input");
  if (input.what === "list") return refused("it is a list, and one answer does not tell its members apart");
  if (input.what === "unit" || input.what === "word") return refused("it is a choice, not an amount");
  const touched = touchedBy(wanted, lines);
  const turned: Line[] = [];
  for (let line = touched.get(answer); line !== undefined; line = touched.get(turned.at(-1)?.name ?? "")) {
    const through = new Set(namesIn(line.tree).filter((name) => name === wanted || touched.has(name)));
    const [only = wanted] = through;
    const [name, tree] = through.size === 1 ? [only, line.tree] : [wanted, writtenInto(line.tree, touched)];
    const found = isolated(tree, name, { op: "name", name: line.name });
    if (!found.ok) return refused(found.why);
    turned.push({ name, tree: found.tree });
    if (name === wanted) break;
  }
  if (turned.length === 0) return refused("the answer does not depend on it");
  const fixed = lines.filter(({ name }) => !touched.has(name));
  return { ok: true, answer, lines: [...needed(fixed, turned), ...turned] };
}
