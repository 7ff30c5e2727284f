// The lines of a formula as MathML, from the same trees that give the answer.
import { maths } from "./handbook.mjs";

const { inWords, parseLines, treeText, formulaStyle } = maths;
const STRENGTH = { "+": 1, "−": 1, "×": 2, "÷": 3 };
const ROUNDINGS = { roundUp: "round up", roundDown: "round down", nearest: "round", orNothing: "or nothing" };

const escaped = (text) => text.replace(/[&<>"]/gu, (mark) => `&#${mark.codePointAt(0)};`);
const word = (name) => `<mi mathvariant="normal">${escaped(inWords(name)).replaceAll(" ", "\u00a0")}</mi>`;
const operator = (sign) => `<mo>${sign}</mo>`;
const bracket = (inside) => `<mrow>${operator("(")}${inside}${operator(")")}</mrow>`;

function written(tree, weakest = 0) {
  if (tree.op === "number") return `<mn>${escaped(tree.text)}</mn>`;
  if (tree.op === "name") return word(tree.name);
  if ("of" in tree) {
    if (tree.op === "√") return `<msqrt>${written(tree.of)}</msqrt>`;
    if (tree.op === "Σ") return `<mrow>${operator("∑")}${written(tree.of, 3)}</mrow>`;
    return `<mrow><mtext>${ROUNDINGS[tree.op]}\u00a0</mtext>${bracket(written(tree.of))}</mrow>`;
  }
  if (tree.op === "÷") {
    const fraction = `<mfrac>${written(tree.left)}${written(tree.right)}</mfrac>`;
    return weakest > 3 ? bracket(fraction) : fraction;
  }
  const own = STRENGTH[tree.op];
  const right = tree.op === "−" ? own + 1 : own;
  const inside = `<mrow>${written(tree.left, own)}${operator(tree.op)}${written(tree.right, right)}</mrow>`;
  return own < weakest ? bracket(inside) : inside;
}

/** About how many letters wide a part is, a fraction as wide as its wider half. */
function widthOf(tree) {
  if (tree.op === "number") return tree.text.length;
  if (tree.op === "name") return inWords(tree.name).length;
  if ("of" in tree) return widthOf(tree.of) + (ROUNDINGS[tree.op]?.length ?? 0) + 2;
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
    ({ name, tree }) => `<mtr><mtd>${word(name)}</mtd><mtd>${operator("=")}</mtd><mtd>${written(tree)}</mtd></mtr>`,
  );
  const widest = (letters) => Math.max(...lines.map(letters));
  const letters = widest(({ name }) => inWords(name).length) + widest(({ tree }) => widthOf(tree));
  return `<div class="formula${letters > LONG ? " long" : ""}" tabindex="0" role="region" aria-label="formula"><math xmlns="http://www.w3.org/1998/Math/MathML" display="block" alttext="${escaped(alttext.join("; "))}"><mtable displaystyle="true" columnalign="right center left">${rows.join("")}</mtable></math></div>\n`;
}
