import { partsOf } from "./parts.js";
import { linesOf, resultApart } from "./working.js";
import type { Working } from "./working.js";

/** Text that HTML and MathML take as it is. */
export function escaped(text: string): string {
  return text.replace(/[&<>"]/gu, (mark) => `&#${String(mark.codePointAt(0))};`);
}

const ELEMENT = { number: "mn", sign: "mo", words: "mtext" } as const;

function row(text: string): string {
  return partsOf(text)
    .map(({ what, text: own }, at, parts) => {
      // A unit stands off its number: MathML sets neighbours without a space.
      const gap = what === "words" && parts[at - 1]?.what === "number" ? "\u00a0" : "";
      return `<${ELEMENT[what]}>${gap}${escaped(own)}</${ELEMENT[what]}>`;
    })
    .join("");
}

function line(left: string, sign: string, right: string): string {
  return `<mtr><mtd>${row(left)}</mtd><mtd><mo>${escaped(sign)}</mo>${row(right)}</mtd></mtr>`;
}

/** A working as MathML, presentation elements only: words stay words, so that a screen reader reads them so. */
export function asMathML(working: Working): string {
  const rows = working.steps.flatMap(linesOf).map(({ name, sign, text }) => line(name, sign, text));
  const apart = resultApart(working);
  if (apart !== null) rows.push(line("", apart.sign, apart.value));
  return `<math xmlns="http://www.w3.org/1998/Math/MathML" display="block"><mtable>${rows.join("")}</mtable></math>`;
}
