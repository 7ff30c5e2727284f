import { describe, expect, it } from "vitest";
import { closed, open } from "#ci/slips/wrong-methods/index.js";
import { calculationOf, questionOf } from "#ci/slips/wrong-methods/question.js";
import { explain } from "../engine/working/index.js";
import { firstWrongLine } from "./index.js";

const sums = [...open, ...closed];

describe("every line of every formula", () => {
  it.each(sums.map((sum) => [sum.formula, sum] as const))(
    "%s: the figures of its own working are right, wrong ones never throw",
    (_name, sum) => {
      const calculation = calculationOf(sum);
      const { input } = questionOf(sum, 0);
      const lines = calculation.declaration.lines.map(({ name }) => name);
      const { steps, result } = explain(calculation as never, input as never);
      const figure = (text: string): string => /-?\d+(?:\.\d+)?/u.exec(text.replace(/,/gu, ""))?.[0] ?? "1";
      for (const [at, line] of lines.entries()) {
        const isLast = at === lines.length - 1;
        const own = isLast ? figure(result.value) : figure(steps[at]?.value ?? "1");
        const judge = (text: string): string | undefined =>
          firstWrongLine(calculation as never, input as never, { [line]: text })[0]?.verdict;
        if (isLast) expect(judge(own)).toMatch(/^right/u);
        for (const wrong of ["7.7777", "0", "123456789", String(Number(own) * 1.3)])
          expect(() => judge(wrong)).not.toThrow();
      }
    },
  );
});
