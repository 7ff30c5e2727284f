import type { Source } from "../formula/index.js";
import { quantityText } from "../quantity/index.js";
import type { Quantity, TextOptions } from "../quantity/index.js";
import { isTold, isWorking, linesOf, resultApart } from "./working.js";
import type { Told, Working } from "./working.js";

/**
 * A source as a reader looks it up: author, title, year and place.
 *
 * @param source of a declaration, of a report, or one's own
 * @example sourceText(reedWidth.declaration.source) // "John T. Taylor, Cotton Weaving and Designing, 6th ed., 1909, London"
 */
export function sourceText({ author, title, year, place }: Source): string {
  return [author, title, year, place].filter(Boolean).join(", ");
}

function workingText(working: Working): string {
  const width = Math.max(...working.inputs.map(({ name }) => name.length));
  const values = Math.max(...working.inputs.map(({ value }) => value.length));
  const lines = [working.name];
  for (const { name, value, meaning } of working.inputs) {
    lines.push(`  ${name.padEnd(width)}  ${value.padEnd(values)}  ${meaning}`.trimEnd());
  }
  for (const { name, text } of working.conversions) lines.push(`  ${name}: ${text}`);
  for (const step of working.steps) {
    for (const { name, sign, text } of linesOf(step)) {
      lines.push(`  ${name.padEnd(step.name.length)} ${sign} ${text}`);
    }
  }
  const result = resultApart(working);
  if (result !== null) lines.push(`  that is ${result.sign} ${result.value}`);
  lines.push(`  Source: ${sourceText(working.source)}`);
  return lines.join("\n");
}

/**
 * A quantity, a working, a verdict, or the question or key of a problem as plain text.
 *
 * @param thing a quantity, or what `explain`, `check` or `problem` gives
 * @param options for a quantity: the unit or units, the step ("1/8"), the digits or the decimals, the rounding and the locale; six
 *   figures of its own unit where nothing is asked for
 * @example asText(ounces(27), { unit: [pounds, ounces] }) // "1 lb 11 oz"
 */
export function asText<D extends string>(
  thing: Quantity<D> | Told | Working,
  options?: TextOptions<NoInfer<D>>,
): string {
  if (isTold(thing)) return thing.says.join("\n");
  return isWorking(thing) ? workingText(thing) : quantityText(thing, options);
}
