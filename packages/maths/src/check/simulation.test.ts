import { describe, expect, it } from "vitest";
import { ownCheck, simulate } from "#ci/slips/simulation.js";
import type { Judge } from "#ci/slips/simulation.js";
import { later, open } from "#ci/slips/wrong-methods/index.js";

const some = [...open.filter((_, at) => at % 5 === 0), ...later.filter((_, at) => at % 5 === 0)];

describe("what the check makes of claims it had no part in", () => {
  const { all, plain, rounded, right, most } = simulate(some, 60, ownCheck, 12);

  it("wrong methods are named first or alone, plain slips and sound workings are not", () => {
    expect(all.first / (all.claims - all.hidden)).toBeGreaterThanOrEqual(0.7);
    expect(all.another / all.claims).toBeLessThanOrEqual(0.03);
    expect(plain.named / plain.claims).toBeLessThanOrEqual(0.02);
    expect(rounded.accused).toBe(0);
    expect(right.claims).toBeGreaterThan(20);
    expect(right.refused).toBe(0);
    expect(most).toBeLessThanOrEqual(3);
  });
});

describe("the table can fail", () => {
  it("where every verdict is 5 % off, for then right answers are refused", () => {
    const off: Judge = (sum, question, written) => ownCheck(sum, question, String(Number(written) * 1.05));
    const { right } = simulate(some, 60, off, 0);
    expect(right.refused).toBeGreaterThan(right.claims * 0.8);
  });

  it("where the names are shuffled, for then another slip is named", () => {
    const shuffled: Judge = (sum, question, written) => {
      const verdict = ownCheck(sum, question, written);
      return {
        ...verdict,
        slips: verdict.slips.map((slip) => ({ ...slip, at: (input: unknown) => (slip.at(input) ?? 0) * 1.01 + 1 })),
      };
    };
    const { all } = simulate(some, 60, shuffled, 0);
    expect(all.first).toBe(0);
    expect(all.another).toBeGreaterThan(0.5 * all.claims);
  });
});
