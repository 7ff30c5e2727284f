import { check, explain } from "@thrum/maths";
import { calculationNamed, readFor } from "./answer.js";

type Rows = readonly (readonly string[])[];

/** The working of a function's sum as rows: the line, the sum in words, the sum in numbers, what it comes to. */
export function workingRows(name: string, values: readonly unknown[]): Rows {
  const calculation = calculationNamed(name);
  const { inputs, conversions, steps } = explain(calculation, readFor(name, calculation, values).input);
  return [
    ...inputs.map((input) => [input.name, input.meaning, "", input.value]),
    ...conversions.map((conversion) => [conversion.name, conversion.text, "", ""]),
    ...steps.map((step) => [step.name, step.formula, step.numbers, `${step.sign} ${step.value}`]),
  ];
}

/** Whether a number somebody worked out is right, the exact answer, and the slips that would give it, as rows. */
export function checkRows(name: string, written: unknown, values: readonly unknown[]): Rows {
  const calculation = calculationNamed(name);
  const { input, unit } = readFor(name, calculation, values);
  const verdict = check(calculation, input, { written: String(written), unit });
  const rounded = `${verdict.right ? "right" : "not right"}: ${verdict.rounded}`;
  return [[rounded], ...verdict.slips.map(({ says }) => [says])];
}
