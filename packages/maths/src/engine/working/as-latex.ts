import { partsOf } from "./parts.js";
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
  const lines = working.steps.flatMap(({ name, formula, numbers, sign, value }) => [
    `${latex(name)} &= ${latex(formula)}`,
    ...(numbers !== formula && numbers !== value ? [`&= ${latex(numbers)}`] : []),
    `&${latex(sign)} ${latex(value)}`,
  ]);
  const last = working.steps.at(-1);
  const result =
    last?.value === working.result.value ? [] : [`&${latex(working.result.sign)} ${latex(working.result.value)}`];
  return `\\begin{aligned}\n${[...lines, ...result].join(" \\\\\n")}\n\\end{aligned}`;
}
