import type { Read, Run, Tree } from "../engine/formula/index.js";
import { isPercent } from "../engine/quantity/index.js";
import type { Unit } from "../engine/quantity/index.js";
import { joined, name, number, part, product } from "./hand.js";
import type { Amount, Hand, Part } from "./hand.js";
import { between, factorsInto, flipped, size, written } from "./unit-factors.js";

const same = (a: Hand, b: Hand): boolean => JSON.stringify(a) === JSON.stringify(b);

/** Constants that cancel are no steps of the hand; two like factors are a square. */
function tidied(hand: Hand): Hand {
  if (hand.op !== "product") return hand;
  const parts = [...hand.parts];
  const pairWith = (at: number, turned: boolean): number =>
    parts.findIndex((one, index) => index > at && one.turned === turned && same(one.of, parts[at]?.of ?? one.of));
  for (let at = 0; at < parts.length; at += 1) {
    const one = parts[at];
    if (one === undefined) break;
    const value = one.of.op === "number" ? one.of.value : null;
    const other =
      value === null
        ? -1
        : parts.findIndex(
            ({ turned, of }, index) => index > at && turned !== one.turned && of.op === "number" && of.value === value,
          );
    if (other > 0) {
      parts.splice(other, 1);
      parts.splice(at, 1);
      at -= 1;
    }
  }
  for (let at = 0; at < parts.length; at += 1) {
    const one = parts[at];
    if (one === undefined || one.of.op === "number") continue;
    const twin = pairWith(at, one.turned);
    if (twin < 0) continue;
    parts.splice(twin, 1);
    parts[at] = { ...one, of: { op: "square", of: one.of } };
  }
  const squares = parts.filter(({ of }) => of.op === "square");
  if (squares.length > 1) {
    const rest = parts.filter(({ of }) => of.op !== "square");
    const inside = squares.map((one) => ({ ...one, of: one.of.op === "square" ? one.of.of : one.of }));
    return joined("product", [...rest, part({ op: "square", of: joined("product", inside) }, false, squares[0]?.line)]);
  }
  return joined("product", parts);
}

/** A sum of the question with its lines, as the hand works it. */
export interface Worked {
  readonly run: Run;
  readonly unit: Unit<string> | null;
  readonly hand: Hand;
  readonly values: ReadonlyMap<string, Amount>;
  /** The sum of a line; of the same kind as the answer it comes in the unit of the claim. */
  readonly lineOf: (line: string) => Hand;
  /** The whole sum with other lines, or with something done to one line's figure. */
  readonly with: (lines: Run["declared"]["lines"], wrap?: (line: string, hand: Hand) => Hand) => Hand;
}

/** The numbers of the question, as they stand in it; percentages as parts of one. */
export function amountsOf(
  inputs: ReadonlyMap<string, Read>,
  like: ReadonlyMap<string, Read> = inputs,
): ReadonlyMap<string, Amount> {
  const values = new Map<string, Amount>();
  const one = (read: Read | undefined, own: Read | undefined): number => {
    if (read?.what === "number") return read.value.toNumber();
    if (read?.what !== "quantity") return Number.NaN;
    const ratio = own?.what === "quantity" ? size(read.unit) / size(own.unit) : 1;
    return read.value.toNumber() * (isPercent(read.unit) ? size(read.unit) : ratio === 1 ? 1 : ratio);
  };
  for (const [key, read] of inputs) {
    const own = like.get(key);
    const model = own?.what === "list" ? own.members[0] : own;
    values.set(key, read.what === "list" ? read.members.map((member) => one(member, model)) : one(read, model));
  }
  return values;
}

/** Writes a sum out as the hand does it, in the unit of the claim. */
export function handOf(run: Run, unit: Unit<string> | null): Worked {
  const { declared, inputs, frame, unit: own, countedIn } = run;
  const ofInput = (key: string): Hand => {
    const [field = "", side] = key.split(".");
    const read = inputs.get(field);
    if (read?.what === "unit" && (side === "length" || side === "mass")) {
      const [amount, of] = read.unit.of?.[side] ?? [1, null];
      const counted = number(amount, { kind: "amount", input: field, says: read.unit.symbol });
      const turn = of === null || frame[side] === null ? [] : between(of, frame[side], side, field);
      return product(...(amount === 1 ? [] : [part(counted)]), ...turn);
    }
    const first = read?.what === "list" ? read.members[0] : read;
    if (first?.what !== "quantity" || isPercent(first.unit)) return name(key);
    const { unit: given, reckonedIn } = first;
    const into =
      reckonedIn === null
        ? factorsInto(frame, given, key)
        : written(size(given) / size(reckonedIn), "length", key, `${given.symbol} for ${reckonedIn.symbol}`);
    return product(part(name(key)), ...into);
  };
  const built = (tree: Tree, line: string, above: ReadonlyMap<string, Hand>): Hand => {
    if (tree.op === "number") return number(Number(tree.text));
    if (tree.op === "name") return above.get(tree.name) ?? ofInput(tree.name);
    if ("of" in tree) return { op: tree.op, of: built(tree.of, line, above) };
    const [left, right] = [built(tree.left, line, above), built(tree.right, line, above)];
    const turned = tree.op === "−" || tree.op === "÷";
    const op = tree.op === "+" || tree.op === "−" ? "sum" : "product";
    const made = joined(op, [part(left, false, line), part(right, turned, line)]);
    return made;
  };
  const folded = (lines: Run["declared"]["lines"], wrap = (_: string, hand: Hand): Hand => hand): Map<string, Hand> => {
    const above = new Map<string, Hand>();
    for (const { name: line, tree } of lines) above.set(line, wrap(line, tidied(built(tree, line, above))));
    return above;
  };
  const end = declared.lines.at(-1)?.name ?? "";
  const into = ((): readonly Part[] => {
    if (own === null || unit === null) return [];
    if (isPercent(unit)) return written(1 / size(unit), "percent", "", "hundred");
    if (countedIn !== null) return written(size(countedIn) / size(unit), "length", "", unit.symbol);
    return flipped(factorsInto(frame, unit, ""));
  })();
  const inClaim = (hand: Hand): Hand => (into.length === 0 ? hand : tidied(product(part(hand, false, end), ...into)));
  const own0 = folded(declared.lines);
  const powers = new Map(declared.lines.map(({ name: line }) => [line, own0.get(line)]));
  const result: Worked["with"] = (lines, wrap) => inClaim(folded(lines, wrap).get(end) ?? number(Number.NaN));
  return {
    run,
    unit,
    hand: inClaim(own0.get(end) ?? number(Number.NaN)),
    values: amountsOf(inputs),
    lineOf: (line) => powers.get(line) ?? number(Number.NaN),
    with: result,
  };
}
