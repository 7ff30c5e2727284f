// The lines of a formula as MathML, from the same trees that give the answer.
import { maths } from "./handbook.mjs";

const { escaped, formulaStyle, inWords, mathOf, parseLines, treeText } = maths;
const word = (name) => `<mi mathvariant="normal">${escaped(inWords(name)).replaceAll(" ", "\u00a0")}</mi>`;

/** About how many letters wide a part is, a fraction as wide as its wider half. */
function widthOf(tree) {
  if (tree.op === "number") return tree.text.length;
  if (tree.op === "name") return inWords(tree.name).length;
  if ("of" in tree) return widthOf(tree.of) + ("√Σ".includes(tree.op) ? 2 : inWords(tree.op).length + 2);
  const [left, right] = [widthOf(tree.left), widthOf(tree.right)];
  return tree.op === "÷" ? Math.max(left, right) : left + right + 3;
}

/** More letters than the screen of a phone is wide. */
const LONG = 42;

/** A block of MathML, one row a line, with the formula in words as its other text. */
export function formulaMathml(text) {
  const lines = parseLines(text);
  const alttext = lines.map(({ name, tree }) => `${inWords(name)} = ${treeText(tree, formulaStyle(inWords))}`);
  const rows = lines.map(
    ({ name, tree }) => `<mtr><mtd>${word(name)}</mtd><mtd><mo>=</mo></mtd><mtd>${mathOf(tree, word)}</mtd></mtr>`,
  );
  const widest = (letters) => Math.max(...lines.map(letters));
  const letters = widest(({ name }) => inWords(name).length) + widest(({ tree }) => widthOf(tree));
  return `<div class="formula${letters > LONG ? " long" : ""}" tabindex="0" role="region" aria-label="formula"><math xmlns="http://www.w3.org/1998/Math/MathML" display="block" alttext="${escaped(alttext.join("; "))}"><mtable displaystyle="true" columnalign="right center left">${rows.join("")}</mtable></math></div>\n`;
}
