import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { napkins } from "#ci/napkins.js";
import { inches, percentAdded, percentLost } from "../../units/index.js";
import { warpLengthByBothRules } from "./warp-length-by-both-rules.js";

describe("length of warp by both rules", () => {
  it("sets 252 2/9 in beside 247.12 in, 5.10 in less", () => {
    const both = warpLengthByBothRules(napkins);
    expect(both.dividing.in(inches)).toBeCloseTo(2270 / 9, 12);
    expect(both.adding.in(inches)).toBe(247.12);
    expect(both.difference.in(inches)).toBeCloseTo(2270 / 9 - 247.12, 12);
    const [dividing, adding] = both.steps;
    expect([dividing.calculation(dividing.input), adding.calculation(adding.input)]).toEqual([
      both.dividing,
      both.adding,
    ]);
  });
  it("agree where nothing is lost, and else adding is the shorter", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 40 }), (shrinks, takesUp) => {
        const input = { ...napkins, loomToFinished: percentLost(shrinks), takeUp: percentLost(takesUp) };
        const { difference } = warpLengthByBothRules(input);
        if (shrinks + takesUp === 0) expect(difference.in(inches)).toBe(0);
        else expect(difference.in(inches)).toBeGreaterThan(0);
      }),
    );
  });
  it("are refused together", () => {
    expect(() => warpLengthByBothRules({ ...napkins, takeUp: percentAdded(8) as never })).toThrow(
      /warpLength\(.*takeUp/u,
    );
  });
});
