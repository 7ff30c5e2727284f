import type { Tree } from "../formula/index.js";
import { escaped } from "./escaped.js";
import { setLines } from "./set-lines.js";
import { setTree } from "./set-tree.js";
import type { Notation } from "./set-tree.js";
import { isTold } from "./working.js";
import type { Told, Working } from "./working.js";

/** Presentation elements of MathML Core only; a fraction or a root needs no bracket of its own. */
const mathml: Notation = {
  number: (text) => `<mn>${escaped(text)}</mn>`,
  words: (text) => `<mtext>${escaped(text)}</mtext>`,
  sign: (text) => `<mo>${text === "Σ" ? "∑" : escaped(text)}</mo>`,
  row: (inside) => `<mrow>${inside}</mrow>`,
  fraction: (over, under) => `<mfrac><mrow>${over}</mrow><mrow>${under}</mrow></mfrac>`,
  root: (inside) => `<msqrt>${inside}</msqrt>`,
  gap: "\u00a0",
};

/** A formula as MathML, each of its names set by `name`. @internal for the pages of the site */
export function mathOf(tree: Tree, name: (name: string) => string): string {
  return mathml.row(setTree(tree, mathml, name));
}

/**
 * A working as MathML, presentation elements of MathML Core only: a quotient is a fraction, words stay words, so that a screen
 * reader reads them so. Sentences are a line each.
 */
export function asMathML(working: Told | Working): string {
  const rows = isTold(working)
    ? working.says.map((text) => `<mtr><mtd>${mathml.words(text)}</mtd></mtr>`)
    : setLines(working, mathml).map(
        ({ name, sign, line }) => `<mtr><mtd>${name}</mtd><mtd>${mathml.row(sign + line)}</mtd></mtr>`,
      );
  const table = `<mtable displaystyle="true">${rows.join("")}</mtable>`;
  return `<math xmlns="http://www.w3.org/1998/Math/MathML" display="block">${table}</math>`;
}
