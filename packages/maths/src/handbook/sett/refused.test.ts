import { describe, expect, it } from "vitest";
import { faultsOf } from "#ci/faults-of.js";
import { balasubramanianCloth } from "#ci/sources.js";
import { cottonCount, endsPerInch, worstedCount } from "../../units/index.js";
import { plainWeave, twill } from "../weave/index.js";
import { diametersByPeirce } from "../yarn/index.js";
import { comparedSetts, floatFactor, purposeShare, settByCurvature } from "./index.js";
import type { ComparedSettsInput } from "./index.js";

describe("what a sum of the sett wants and does not get is named, with what it is", () => {
  it("of the rules side by side", () => {
    expect(faultsOf(comparedSetts, {})).toEqual([
      "comparedSetts({ weave }): a list of 1 to 1000 picks",
      "comparedSetts({ count }): an indirect count",
      'comparedSetts({ material }): "cotton" or "worsted" or "woollen"',
      'comparedSetts({ wrapsPerInch }): a whole number of wraps, or "not wrapped"',
    ]);
    for (const wrapsPerInch of [-1, null])
      expect(
        faultsOf(comparedSetts, { weave: plainWeave, count: cottonCount(8), material: "cotton", wrapsPerInch }),
      ).toEqual(['comparedSetts({ wrapsPerInch }): a whole number of wraps, or "not wrapped"']);
    const zero = { weave: plainWeave, count: cottonCount(8), material: "cotton", wrapsPerInch: 0 } as const;
    expect(() => comparedSetts(zero)).toThrow(
      "received the number 0. Wrap the yarn round a ruler, touching, and count it over an inch.",
    );
  });

  it("of a float and of a purpose", () => {
    expect(faultsOf(floatFactor, {})).toEqual([
      "floatFactor({ averageFloat }): a number",
      "floatFactor({ exponent }): a number",
    ]);
    expect(faultsOf(purposeShare, {})).toEqual([
      'purposeShare({ purpose }): "ordinary" or "upholstery" or "delicate" or "good working sett"',
    ]);
  });
});

describe("a rule of the sett", () => {
  const yarn = { count: cottonCount(4), material: "cotton", wrapsPerInch: "not wrapped" } as const;
  const of = (input: Partial<ComparedSettsInput>): ReturnType<typeof comparedSetts> =>
    comparedSetts({ weave: plainWeave, ...yarn, ...input });
  const perInch = (input: Partial<ComparedSettsInput>, rule: string): number | undefined =>
    of(input)
      .setts.find((one) => one.rule.startsWith(rule))
      ?.sett.in(endsPerInch);

  it("says why where it does not speak", () => {
    const worsted = of({ count: worstedCount(20), material: "worsted" });
    expect(worsted.silent).toEqual([
      { rule: "Brierley", why: "its constant for worsted yarn was not found in print" },
      { rule: "jam of Peirce", why: "it is worked out for cotton in plain weave" },
      { rule: "wraps", why: "the yarn was not wrapped" },
    ]);
    expect(of({ weave: ["xx..", "xx..", "..xx", "..xx"] }).silent[0]).toEqual({
      rule: "Brierley",
      why: "only its exponent for twills was found in print",
    });
  });

  it("speaks of a twill to either side, and of a plain weave drawn over more ends than picks", () => {
    const [right, left] = [twill({ floats: [3, 1] }), [...twill({ floats: [3, 1] })].reverse()];
    expect(perInch({ weave: left }, "Brierley")).toBe(perInch({ weave: right }, "Brierley"));
    // Plain weave of two ends as one is no twill, and floats 1 and 2: its average float along the pick is 2.
    expect(perInch({ weave: ["x.x.", ".x.x"] }, "Brierley")).toBe(perInch({}, "Brierley"));
    expect(perInch({ weave: ["xx..", "..xx"] }, "Brierley")).toBeUndefined();
  });

  it("counts over the whole weave where one pick intersects more often than another", () => {
    // Picks of 2, 2 and 4 intersections over 4 ends each: 12 ends and 8 intersections; 0.9 √3360 × 12 ÷ 20.
    const mixed = perInch({ weave: ["xxx.", "..xx", ".x.x"] }, "ends and intersections, constant 0.9 by faena");
    expect(mixed).toBeCloseTo((0.9 * Math.sqrt(3360) * 12) / 20, 9);
  });

  it("shows the jam of Peirce from the diameter on", () => {
    const jam = of({}).setts.find(({ rule }) => rule === "jam of Peirce");
    expect(jam).toMatchObject({
      holdsFor: "round cotton threads in square plain cloth",
      status: "read",
      source: balasubramanianCloth,
    });
    expect(jam?.steps.map(({ calculation }) => calculation)).toEqual([diametersByPeirce, settByCurvature]);
  });
});
