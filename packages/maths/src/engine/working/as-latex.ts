import { partsOf } from "./parts.js";
import { isRemarks } from "./remarks.js";
import type { Remarks } from "./remarks.js";
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

function words(text: string): string {
  return `\\text{${text.replace(/[\\{}$&#%_^~]/gu, (mark) => MARKS[mark] ?? `\\${mark}`)}}`;
}

function latex(text: string): string {
  return partsOf(text)
    .map(({ what, text: own }, at, parts) => {
      const gap = parts[at - 1]?.what === "number" ? " " : "";
      if (what === "sign") return SIGNS[own] ?? own;
      return what === "number" ? own : words(gap + own);
    })
    .join(" ");
}

function aligned(lines: readonly string[]): string {
  return `\\begin{aligned}\n${lines.join(" \\\\\n")}\n\\end{aligned}`;
}

/** A working as LaTeX, one aligned line for each step, or remarks, one for each; the same numbers as every other printer. */
export function asLatex(working: Working | Remarks): string {
  if (isRemarks(working)) return aligned([working.about, ...working.remarks].map((one) => `&${words(one)}`));
  const lines = working.steps.flatMap(linesOf).map(({ name, sign, text }) => {
    return `${name === "" ? "" : `${latex(name)} `}&${latex(sign)} ${latex(text)}`;
  });
  const apart = resultApart(working);
  const result = apart === null ? [] : [`&${latex(apart.sign)} ${latex(apart.value)}`];
  return aligned([...lines, ...result]);
}
