import type { Decimal } from "../numbers.js";
import { declarationOf, dimensionsOf, formulaStyle, run, treeText, writtenOut } from "../formula/index.js";
import type { Calculation, Powers, Run, Step, Value } from "../formula/index.js";
import { asHtml } from "./as-html.js";
import { asText } from "./as-text.js";
import { conversionsOf, inputText } from "./inputs.js";
import { amount, counted, inWords, symbolFor, symbolOf } from "./words.js";
import type { Working, WorkingStep } from "./working.js";

/** How many members each list has. */
function sizesOf(values: ReadonlyMap<string, Value>): ReadonlyMap<string, number> {
  return new Map([...values].flatMap(([name, value]) => (Array.isArray(value) ? [[name, value.length]] : [])));
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
    const read = inputs.get(list);
    const given = read?.what === "list" ? read.members : read === undefined ? [] : [read];
    const percents = given.flatMap((one) =>
      one.what === "quantity" && one.unit.symbol === "%" ? [inputText(one)] : [],
    );
    if (percents.length > 0)
      return (at === undefined ? percents : percents.slice(Number(at), Number(at) + 1)).join(", ");
    return wanted.map((one) => amount(one, symbolAt(list)).text).join(", ");
  };
  return worked.steps.map((step: Step, at) => {
    const last = at === worked.steps.length - 1;
    // A percentage is reckoned as a part of one and told in hundredths.
    const told = last && worked.unit?.symbol === "%" ? worked.value : step.value;
    const members = Array.isArray(told) ? (told as readonly Decimal[]) : [told as Decimal];
    const symbol =
      last && worked.unit === null
        ? counted(worked.value, declared.result.noun)
        : stepSymbol(worked, step.name, powers, last);
    const texts = members.map((one) => amount(one, symbol));
    const numbers = treeText(writtenOut(step.tree, sizesOf(known)), formulaStyle(valueText));
    known.set(step.name, step.value);
    return {
      name: inWords(step.name),
      formula: treeText(step.tree, formulaStyle(inWords)),
      numbers,
      sign: texts.every(({ exact }) => exact) ? "=" : "≈",
      value: texts.map(({ text }) => text).join(", "),
      unit: symbol,
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
  const worked = run(declarationOf("explain", calculation), input);
  const { declared, inputs, unit, value } = worked;
  const result = amount(value, unit === null ? counted(value, declared.result.noun) : unit.symbol);
  const working: Working = {
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
  // What a notebook shows for it, the richest kind it can.
  return Object.defineProperty(working, Symbol.for("Jupyter.display"), {
    value: () => ({ "text/plain": asText(working), "text/html": asHtml(working) }),
  });
}
