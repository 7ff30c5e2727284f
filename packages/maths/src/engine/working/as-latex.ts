import { partsOf } from "./parts.js";
import { isTold, linesOf, resultApart } from "./working.js";
import type { Told, Working } from "./working.js";

const SIGNS: Readonly<Record<string, string>> = {
  "+": "+",
  "−": "-",
  "×": "\\times",
  "÷": "\\div",
  "√": "\\surd",
  Σ: "\\textstyle\\sum",
  "(": "(",
  ")": ")",
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

function latex(text: string): string {
  return partsOf(text)
    .map(({ what, text: own }, at, parts) => {
      const gap = parts[at - 1]?.what === "number" ? " " : "";
      if (what === "sign") return SIGNS[own] ?? own;
      return what === "number" ? own : `\\text{${gap}${plain(own)}}`;
    })
    .join(" ");
}

/** A working as LaTeX for a formula: one aligned line for each step. Sentences become a list, for the text around it. */
export function asLatex(working: Told | Working): string {
  if (isTold(working))
    return ["\\begin{itemize}", ...working.says.map((text) => `\\item ${sentence(text)}`), "\\end{itemize}"].join("\n");
  const lines = working.steps.flatMap(linesOf).map(({ name, sign, text }) => {
    return `${name === "" ? "" : `${latex(name)} `}&${latex(sign)} ${latex(text)}`;
  });
  const apart = resultApart(working);
  const result = apart === null ? [] : [`&${latex(apart.sign)} ${latex(apart.value)}`];
  return `\\begin{aligned}\n${[...lines, ...result].join(" \\\\\n")}\n\\end{aligned}`;
}
