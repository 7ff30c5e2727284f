import { mathOf } from "./math.js";
import { isTold, linesOf, resultApart } from "./working.js";
import type { Told, Working } from "./working.js";
import { escaped } from "./escaped.js";

function line(left: string, sign: string, right: string): string {
  return `<mtr><mtd>${mathOf(left)}</mtd><mtd><mrow><mo>${escaped(sign)}</mo>${mathOf(right)}</mrow></mtd></mtr>`;
}

function rowsOf(working: Working): readonly string[] {
  const apart = resultApart(working);
  return [
    ...working.steps.flatMap(linesOf).map(({ name, sign, text }) => line(name, sign, text)),
    ...(apart === null ? [] : [line("", apart.sign, apart.value)]),
  ];
}

/**
 * A working as MathML, presentation elements of MathML Core only: a quotient is a fraction, words stay words, so that a screen
 * reader reads them so. Sentences are a line each.
 */
export function asMathML(working: Told | Working): string {
  const rows = isTold(working)
    ? working.says.map((text) => `<mtr><mtd><mtext>${escaped(text)}</mtext></mtd></mtr>`)
    : rowsOf(working);
  const table = `<mtable displaystyle="true">${rows.join("")}</mtable>`;
  return `<math xmlns="http://www.w3.org/1998/Math/MathML" display="block">${table}</math>`;
}
