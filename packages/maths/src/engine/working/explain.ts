import { decimalText } from "../numbers.js";
import type { Decimal } from "../numbers.js";
import { declarationOf, dimensionsOf, formulaStyle, run, stepsOf, treeText } from "../formula/index.js";
import type { Calculation, Powers, Run, Step, Value } from "../formula/index.js";
import { decimalOf, inUnit, isPercent, makeQuantity } from "../quantity/index.js";
import type { Quantity } from "../quantity/index.js";
import { amountsAt, inMembers } from "./amounts.js";
import { asHtml } from "./as-html.js";
import { asText } from "./as-text.js";
import { checkOptions } from "./check-options.js";
import { conversionsOf, inputAmounts, inputText } from "./inputs.js";
import { amount, counted, inWords, symbolFor, symbolOf } from "./words.js";
import type { ExplainOptions, Working, WorkingStep } from "./working.js";

function stepTexts(worked: Run): Pick<Working, "steps" | "amounts"> {
  const { declared } = worked;
  const powers = dimensionsOf(declared);
  const known = new Map<string, Value>(worked.values);
  const amounts = inputAmounts(worked, powers);
  const amountText = (name: string): string => amountsAt(amounts, name).join(", ");
  const steps = worked.steps.map((step, at): WorkingStep => {
    const last = at === worked.steps.length - 1;
    // A percentage is reckoned as a part of one and told in hundredths.
    const members = [last && isPercent(worked.unit) ? worked.value : step.value].flat();
    const symbol =
      last && worked.unit === null
        ? counted(worked.value, declared.result.noun)
        : stepSymbol(worked, step.name, powers, last);
    const texts = members.map((one) => amount(one, symbol));
    const numbers = treeText(inMembers(step.tree, amounts), formulaStyle(amountText));
    const unrounded = beforeRounding(step, known, worked.nearness);
    known.set(step.name, step.value);
    amounts[step.name] = texts.map(({ text }) => text);
    return {
      key: step.name,
      name: inWords(step.name),
      formula: treeText(step.tree, formulaStyle(inWords)),
      numbers,
      sign: texts.every(({ exact }) => exact) ? "=" : "≈",
      value: amountText(step.name),
      unit: symbol,
      tree: step.tree,
      values: members.map(decimalText),
      unrounded,
    };
  });
  return { steps, amounts };
}

/** What a rounding line was made from. */
function beforeRounding({ tree }: Step, known: ReadonlyMap<string, Value>, nearness: string): string | null {
  if (!("of" in tree) || !["roundUp", "roundDown", "nearest"].includes(tree.op)) return null;
  const [step] = stepsOf([{ name: "unrounded", tree: tree.of }], known, nearness).steps;
  return step === undefined || Array.isArray(step.value) ? null : decimalText(step.value as Decimal);
}

/** The answer of a run, in the unit asked for. */
function answerOf({ value, unit, declared }: Run, { unit: wanted, digits = 6 }: ExplainOptions): Answered {
  if (unit === null) {
    const told = amount(value, counted(value, declared.result.noun), digits);
    return { answer: value.toNumber(), result: { sign: told.exact ? "=" : "≈", value: told.text } };
  }
  const made = makeQuantity(unit, value);
  const answer = wanted === undefined ? made : inUnit(made, wanted);
  const told = amount(decimalOf(answer), (wanted ?? unit).symbol, digits);
  return { answer, result: { sign: told.exact ? "=" : "≈", value: told.text } };
}

type Answered = Pick<Working, "answer" | "result">;

function stepSymbol(worked: Run, name: string, powers: ReadonlyMap<string, Powers>, last: boolean): string {
  const own = powers.get(name) ?? [0, 0];
  const bare = own.every((power) => power === 0);
  if (last && worked.countedIn !== null) return worked.countedIn.symbol;
  if (last && worked.unit !== null) return bare ? worked.unit.symbol : symbolFor(worked.frame, worked.unit);
  return symbolOf(worked.frame, own);
}

/**
 * The working of a calculation: every line of its formula with the numbers in it. Answer and working come from one
 * evaluation.
 *
 * @param calculation any calculation of the handbook
 * @param input what one would call it with
 * @param options the unit and the figures the result is told in
 * @throws QuantityError as the calculation itself would
 */
export function explain<I, R>(
  calculation: Calculation<I, R>,
  input: NoInfer<I>,
  options: ExplainOptions<R extends Quantity<infer D> ? D : never> = {},
): Working {
  checkOptions(options);
  const worked = run(declarationOf("explain", calculation), input);
  const { declared, inputs } = worked;
  const { answer, result } = answerOf(worked, options);
  const working: Working = {
    name: inWords(declared.name),
    inputs: [...inputs].map(([name, read]) => ({
      key: name,
      name: inWords(name),
      value: inputText(read),
      meaning: declared.inputs[name]?.meaning ?? "",
    })),
    conversions: conversionsOf(worked),
    ...stepTexts(worked),
    result,
    answer,
    source: declared.source,
  };
  // What a notebook shows for it, the richest kind it can.
  return Object.defineProperty(working, Symbol.for("Jupyter.display"), {
    value: () => ({ "text/plain": asText(working), "text/html": asHtml(working) }),
  });
}
