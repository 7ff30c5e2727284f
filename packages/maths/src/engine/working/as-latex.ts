import { partsOf } from "./parts.js";
import { linesOf, resultApart } from "./working.js";
import type { Working } from "./working.js";

const SIGNS: Readonly<Record<string, string>> = {
  ...{ "+": "+", "−": "-", "×": "\\times", "÷": "\\div", "√": "\\surd", Σ: "\\textstyle\\sum" },
  ...{ "(": "(", ")": ")", ",": ",", "=": "=", "≈": "\\approx" },
};

/** Marks that LaTeX acts upon, as it prints them. */
const MARKS: Readonly<Record<string, string>> = {
  "\\": "\\textbackslash{}",
  "^": "\\textasciicircum{}",
  "~": "\\textasciitilde{}",
};

function latex(text: string): string {
  return partsOf(text)
    .map(({ what, text: own }, at, parts) => {
      const gap = parts[at - 1]?.what === "number" ? " " : "";
      if (what === "sign") return SIGNS[own] ?? own;
      return what === "number"
        ? own
        : `\\text{${gap}${own.replace(/[\\{}$&#%_^~]/gu, (mark) => MARKS[mark] ?? `\\${mark}`)}}`;
    })
    .join(" ");
}

/** A working as LaTeX: one aligned line for each step, the same numbers as every other printer gives. */
export function asLatex(working: Working): string {
  const lines = working.steps.flatMap(linesOf).map(({ name, sign, text }) => {
    return `${name === "" ? "" : `${latex(name)} `}&${latex(sign)} ${latex(text)}`;
  });
  const apart = resultApart(working);
  const result = apart === null ? [] : [`&${latex(apart.sign)} ${latex(apart.value)}`];
  return `\\begin{aligned}\n${[...lines, ...result].join(" \\\\\n")}\n\\end{aligned}`;
}
