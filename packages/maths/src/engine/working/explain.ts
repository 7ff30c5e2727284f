import { Decimal } from "../numbers.js";
import { powersOf } from "../quantity/index.js";
import type { Unit } from "../quantity/index.js";
import { dimensionsOf, factorInto, formulaStyle, intoFrame, run, treeText, withNames } from "../formula/index.js";
import type { Calculation, Powers, Read, Run, Source, Step, Tree, Value } from "../formula/index.js";
import { amount, counted, factorText, inWords, symbolFor, symbolOf } from "./words.js";

/** One line of a working: the formula, the numbers in it, and what they come to. */
export interface WorkingStep {
  readonly name: string;
  readonly formula: string;
  readonly numbers: string;
  readonly sign: "=" | "≈";
  readonly value: string;
}

/** A whole working as data; the printers write it out. */
export interface Working {
  readonly name: string;
  readonly inputs: readonly { readonly name: string; readonly value: string; readonly meaning: string }[];
  readonly conversions: readonly { readonly name: string; readonly text: string }[];
  readonly steps: readonly WorkingStep[];
  readonly result: { readonly sign: "=" | "≈"; readonly value: string };
  readonly source: Source;
}

/** An input in full where it is short; a computed one is told to be rounded. */
function asGiven(value: Decimal, symbol: string): string {
  const short = amount(value, symbol, value.precision() <= 12 ? 12 : 6);
  return short.exact ? short.text : `≈ ${short.text}`;
}

function inputText(read: Read): string {
  if (read.what === "list") return read.members.map(inputText).join(", ");
  if (read.what === "number") return amount(read.value, "").text;
  if (read.what === "quantity") return asGiven(read.value, read.unit.symbol);
  if (read.what === "word") return read.word;
  const { length, mass } = read.unit.of ?? { length: null, mass: null };
  const parts = [length, mass].map((part) => (part ? `${String(part[0])} ${part[1].symbol}` : "")).filter(Boolean);
  return `${read.unit.symbol}: ${parts.join(" to ")}`;
}

/** How an input is turned into the unit of work; nothing where it already is in it. */
function conversionsOf({ inputs, frame }: Run): Working["conversions"] {
  const lines: { name: string; text: string }[] = [];
  const convert = (name: string, value: Decimal, unit: Unit<string>): void => {
    const factor = factorInto(frame, unit);
    if (factor[0].eq(factor[1]) || powersOf(unit.dimension).every((power) => power === 0)) return;
    const into = amount(intoFrame(frame, value, unit), symbolFor(frame, unit));
    const from = asGiven(value, unit.symbol);
    lines.push({ name: inWords(name), text: `${from} ${factorText(factor)} ${into.exact ? "=" : "≈"} ${into.text}` });
  };
  for (const [name, read] of inputs) {
    for (const one of read.what === "list" ? read.members : [read]) {
      if (one.what === "quantity") convert(name, one.value, one.unit);
      if (one.what !== "unit") continue;
      const { length, mass } = one.unit.of ?? { length: null, mass: null };
      if (length) convert(`${name}.length`, new Decimal(length[0]), length[1]);
      if (mass) convert(`${name}.mass`, new Decimal(mass[0]), mass[1]);
    }
  }
  return lines;
}

/** Every Σ written out as the sum it stands for, its members numbered. */
function writtenOut(tree: Tree, values: ReadonlyMap<string, Value>): Tree {
  if (tree.op === "number" || tree.op === "name") return tree;
  if (!("of" in tree)) return { ...tree, left: writtenOut(tree.left, values), right: writtenOut(tree.right, values) };
  if (tree.op !== "Σ") return { ...tree, of: writtenOut(tree.of, values) };
  const sizes = [...values.values()].map((value) => (Array.isArray(value) ? value.length : 1));
  const members = Array.from({ length: Math.max(...sizes) }, (_, at) =>
    withNames(tree.of, (name) =>
      Array.isArray(values.get(name)) ? { op: "name", name: `${name}[${String(at)}]` } : null,
    ),
  );
  return members.reduce((left, right) => ({ op: "+", left, right }));
}

function stepTexts(worked: Run): readonly WorkingStep[] {
  const { declared, frame, inputs } = worked;
  const powers = dimensionsOf(declared);
  const known = new Map<string, Value>(worked.values);
  const symbolAt = (name: string): string => {
    const read = inputs.get(name);
    const one = read?.what === "list" ? read.members[0] : read;
    if (one?.what === "quantity") return symbolFor(frame, one.unit);
    return symbolOf(frame, powers.get(name) ?? [0, 0]);
  };
  const valueText = (name: string): string => {
    const [, list = name, at] = /^(.*)\[(\d+)\]$/u.exec(name) ?? [];
    const value = known.get(list);
    const members = Array.isArray(value) ? (value as readonly Decimal[]) : [value as Decimal];
    const wanted = at === undefined ? members : members.slice(Number(at), Number(at) + 1);
    const percent = inputs.get(list);
    if (percent?.what === "quantity" && percent.unit.symbol === "%") return inputText(percent);
    return wanted.map((one) => amount(one, symbolAt(list)).text).join(", ");
  };
  return worked.steps.map((step: Step, at) => {
    const last = at === worked.steps.length - 1;
    const members = Array.isArray(step.value) ? (step.value as readonly Decimal[]) : [step.value as Decimal];
    const symbol =
      last && worked.unit === null
        ? counted(worked.value, declared.result.noun)
        : stepSymbol(worked, step.name, powers, last);
    const texts = members.map((one) => amount(one, symbol));
    const numbers = treeText(writtenOut(step.tree, known), formulaStyle(valueText));
    known.set(step.name, step.value);
    return {
      name: inWords(step.name),
      formula: treeText(step.tree, formulaStyle(inWords)),
      numbers,
      sign: texts.every(({ exact }) => exact) ? "=" : "≈",
      value: texts.map(({ text }) => text).join(", "),
    };
  });
}

function stepSymbol(worked: Run, name: string, powers: ReadonlyMap<string, Powers>, last: boolean): string {
  const own = powers.get(name) ?? [0, 0];
  const bare = own.every((power) => power === 0);
  if (last && worked.unit !== null) return bare ? worked.unit.symbol : symbolFor(worked.frame, worked.unit);
  return symbolOf(worked.frame, own);
}

/**
 * The working of a calculation: every line of its formula with the numbers in it. Answer and working come from one
 * evaluation.
 *
 * @param calculation any calculation of the handbook
 * @param input what one would call it with
 * @throws QuantityError as the calculation itself would
 */
export function explain<I>(calculation: Calculation<I, unknown>, input: NoInfer<I>): Working {
  const worked = run(calculation.declaration, input);
  const { declared, inputs, unit, value } = worked;
  const result = amount(value, unit === null ? counted(value, declared.result.noun) : unit.symbol);
  return {
    name: inWords(declared.name),
    inputs: [...inputs].map(([name, read]) => ({
      name: inWords(name),
      value: inputText(read),
      meaning: declared.inputs[name]?.meaning ?? "",
    })),
    conversions: conversionsOf(worked),
    steps: stepTexts(worked),
    result: { sign: result.exact ? "=" : "≈", value: result.text },
    source: declared.source,
  };
}
