import { setLines } from "./set-lines.js";
import type { Notation } from "./set-tree.js";
import { isTold } from "./working.js";
import type { Told, Working } from "./working.js";

const SIGNS: Readonly<Record<string, string>> = {
  "+": "+",
  "−": "-",
  "×": "\\times",
  "÷": "\\div",
  "√": "\\surd",
  Σ: "\\sum",
  "(": "\\left(",
  ")": "\\right)",
  ",": ",",
  "=": "=",
  "≈": "\\approx",
};

/** Marks that LaTeX acts upon, as it prints them. */
const MARKS: Readonly<Record<string, string>> = {
  "\\": "\\textbackslash{}",
  "^": "\\textasciicircum{}",
  "~": "\\textasciitilde{}",
};

/** Words with nothing left that LaTeX would act on. */
function plain(text: string): string {
  return text.replace(/[\\{}$&#%_^~]/gu, (mark) => MARKS[mark] ?? `\\${mark}`);
}

function sentence(text: string): string {
  return Array.from(plain(text), (mark) => (/[−×÷√Σ≈]/u.test(mark) ? `$${SIGNS[mark] ?? mark}$` : mark)).join("");
}

/** Every part ends in a space, which parts it from the next. */
const latex: Notation = {
  number: (text) => `${plain(text)} `,
  words: (text) => `\\text{${plain(text)}} `,
  sign: (text) => `${SIGNS[text] ?? plain(text)} `,
  row: (inside) => inside,
  fraction: (over, under) => `\\frac{${over.trimEnd()}}{${under.trimEnd()}} `,
  root: (inside) => `\\sqrt{${inside.trimEnd()}} `,
  gap: " ",
};

/** A working as LaTeX for a formula: one aligned line for each step. Sentences become a list, for the text around it. */
export function asLatex(working: Told | Working): string {
  if (isTold(working))
    return ["\\begin{itemize}", ...working.says.map((text) => `\\item ${sentence(text)}`), "\\end{itemize}"].join("\n");
  const lines = setLines(working, latex).map(({ name, sign, line }) => `${name}&${sign}${line.trimEnd()}`);
  return `\\begin{aligned}\n${lines.join(" \\\\\n")}\n\\end{aligned}`;
}
