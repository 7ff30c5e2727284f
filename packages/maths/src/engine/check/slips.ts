import { dimensionsOf, folded, namesIn, parseLines, withNames } from "../formula/index.js";
import type { Line, Powers, Run, Tree, Value } from "../formula/index.js";
import { inWords } from "../working/index.js";
import { changesOf } from "./changes.js";
import { misreadings } from "./misreadings.js";
import { percentageSlips } from "./percentages.js";
import { named } from "./scene.js";
import type { Scene } from "./scene.js";

/** A formula with one thing done wrong. */
export interface Slip {
  readonly says: () => string;
  /** The line it stands at; empty where an input is misread. */
  readonly line: string;
  /** How far down a list it belongs: 0 a slip of the trade, 9 a mere possibility. */
  readonly rank: number;
  readonly lines: readonly Line[];
  /** The first line that comes to something else; `values` hold what stands above it. */
  readonly from: number;
  readonly values: ReadonlyMap<string, Value>;
}

/** A name used where another of its kind belongs, and an answer that stops at a line before the last. */
function strayNames(
  { declared }: Run,
  powers: ReadonlyMap<string, Powers>,
  at: number,
): readonly { readonly says: () => string; readonly tree: Tree; readonly rank: number }[] {
  const line = declared.lines[at];
  if (line === undefined) return [];
  const kind = (name: string): string => {
    const own = powers.get(name) ?? [0, 0];
    const { what = "line", dimension = "" } = declared.inputs[name] ?? {};
    if (what === "list") return `list ${dimension}`;
    return own.every((power) => power === 0) ? `${what} ${dimension} ${what === "line" ? name : ""}` : String(own);
  };
  const before = [...Object.keys(declared.inputs), ...declared.lines.slice(0, at).map(({ name }) => name)];
  const used = [...new Set(namesIn(line.tree))];
  const swaps = used.flatMap((name) =>
    before
      .filter((other) => other !== name && kind(other) === kind(name))
      .map((other) => ({
        rank: 6,
        says: () => `uses ${inWords(other)} where ${inWords(name)} belongs`,
        tree: withNames(line.tree, (one) => (one === name ? named(other) : null)),
      })),
  );
  const stops = declared.lines
    .slice(0, at)
    .filter(({ name }) => kind(name) === String(powers.get(line.name)))
    .map(({ name }) => ({ rank: 5, says: () => `stops at ${inWords(name)}`, tree: named(name) }));
  return [...stops, ...swaps];
}

/**
 * Every known slip of a formula: declared beside it, a small change of one line, or a misread input. `powers` are those of the
 * right formula: one that holds a slip already may add unlike things.
 */
export function slipsOf(
  worked: Run,
  powers: ReadonlyMap<string, Powers> = dimensionsOf(worked.declared),
): readonly Slip[] {
  const { declared, values, inputs } = worked;
  const { lines } = declared;
  const trees = new Map(lines.map(({ name, tree }) => [name, tree]));
  const opened = (tree: Tree): Tree => (tree.op === "name" ? (trees.get(tree.name) ?? tree) : tree);
  const scene: Scene = { worked, opened };
  const last = lines.at(-1)?.name ?? "";
  const above = lines.map(
    (_, at) =>
      new Map<string, Value>([
        ...values,
        ...worked.steps.slice(0, at).map(({ name, value }) => [name, value] as const),
      ]),
  );
  const trade = declared.slips.map(({ says, instead }): Slip => {
    const replaced = new Map(parseLines(instead).map((line) => [line.name, line]));
    const line = lines.find(({ name }) => replaced.has(name))?.name ?? last;
    return {
      says: () => says,
      rank: 0,
      line,
      from: 0,
      lines: lines.map((one) => replaced.get(one.name) ?? one),
      values,
    };
  });
  const small = lines.flatMap(({ name, tree }, at) =>
    [...changesOf(tree, scene), ...strayNames(worked, powers, at)].map(({ says, rank, tree: changed }): Slip => ({
      ...{ says, rank, line: name, from: at, values: above[at] ?? values },
      lines: lines.map((one, index) => (index === at ? { name, tree: changed } : one)),
    })),
  );
  const percent = percentageSlips(folded(lines), inputs).map(({ says, rank, tree }): Slip => ({
    says,
    rank,
    line: last,
    from: 0,
    lines: [{ name: last, tree }],
    values,
  }));
  const misread = misreadings(worked).map(({ says, rank, values: read }): Slip => ({
    says,
    rank,
    line: "",
    from: 0,
    lines,
    values: read,
  }));
  return [...trade, ...percent, ...small, ...misread];
}
