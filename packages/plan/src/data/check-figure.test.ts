import { grams, inches, ounces, yards } from "@thrum/maths";
import { describe, expect, it } from "vitest";
import { examplePlan } from "#ci/example-plans.js";
import { plainSlip } from "#ci/slips/plain-slips.js";
import { randomFrom } from "#ci/random.js";
import { checkFigure } from "./check-figure.js";

const plan = examplePlan("2-hall-napkins");
const inAll = ["figures", "yarn", "natural", "inAll"];
const needed = ["figures", "warp", "needed"];

describe("a number worked out by hand", () => {
  it("is right where it is the figure", () => {
    // 214117 ÷ 69 yd = 3103.1449…
    const { verdict, above, says } = checkFigure(plan, inAll, { written: "3103.14", unit: yards });
    expect(verdict.right).toBe(true);
    expect(above).toEqual([]);
    expect(says).toEqual(verdict.says);
  });

  it("is judged by the formula of the figure first", () => {
    // 175 in on the loom × 1.08 + 10 in; the figure is 175 ÷ 0.92 + 10 = 200.2173… in.
    const { verdict, above } = checkFigure(plan, needed, { written: "199.0", unit: inches });
    expect(verdict.slips.map(({ says }) => says)).toContain(
      "a sum that adds the 8 % of take-up instead of dividing it out gives this",
    );
    expect(above).toEqual([]);
  });

  it("accuses nobody where its digits tell too little", () => {
    const { verdict, above } = checkFigure(plan, needed, { written: "199", unit: inches });
    expect({ slips: verdict.slips, above }).toEqual({ slips: [], above: [] });
  });

  it("is traced to the figure above where it went wrong", () => {
    // The same slip, in a warp of 254 ends: 3103.1449… − 254 × (200.2173… − 199) ÷ 36 = 3094.5555… yd.
    const { says, above } = checkFigure(plan, inAll, { written: "3094.56", unit: yards });
    expect(above).toMatchObject([{ path: needed, label: "warp needed", value: "199" }]);
    expect(says).toEqual([
      "3094.56 yd: warp needed: a sum that adds the 8 % of take-up instead of dividing it out gives this.",
    ]);
  });

  it("is the formula's own where nothing above explains it either", () => {
    const { verdict, above, says } = checkFigure(plan, inAll, { written: "1234.5678", unit: yards });
    expect(above).toEqual([]);
    expect(says).toEqual(verdict.says);
    expect(checkFigure(plan, inAll, { written: "3.1", unit: grams }).above).toEqual([]);
  });

  it("is refused for what no formula gives", () => {
    const claim = { written: "368", unit: null };
    expect(() => checkFigure(plan, ["figures", "loom", "ends"], claim)).toThrow(
      "expected a figure that a formula gives",
    );
    expect(() => checkFigure(plan, ["figures", "warp", "turns"], claim)).toThrow("waits or has no answer");
    expect(() => checkFigure(plan, ["figures", "loom", "table"], claim)).toThrow("the path of a figure");
  });
});

describe("the evidence over all figures above", () => {
  it("still names what was done to the warp", () => {
    // 175 ÷ 0.92 in, without 10 in of waste; of 254 ends: 3103.1449275 - 254 × 10 ÷ 36 = 3032.5894 yd.
    const { above } = checkFigure(plan, inAll, { written: "3032.5894", unit: yards });
    const says = "a sum that leaves out fringes and loom waste gives this";
    expect(above).toContainEqual({ path: needed, label: "warp needed", says, value: "190.217391304" });
  });

  it("gives a plain slip of arithmetic a name in fewer than one of thirty-three claims", () => {
    const random = randomFrom(14);
    const missing = ["figures", "yarn", "natural", "missing"];
    const factors = [254, 3360, 18.4, 17.5, 0.92];
    let [claims, named] = [0, 0];
    for (const [path, answer, unit, decimals] of [
      [inAll, 3103.1449275362, yards, 0],
      [inAll, 3103.1449275362, yards, 1],
      // 3103.1449275 ÷ 3360 × 16 - 6.
      [missing, 8.7768806073, ounces, 2],
      [missing, 8.7768806073, ounces, 3],
    ] as const) {
      const right = answer.toFixed(decimals);
      for (let slip = 0; slip < 30; slip += 1) {
        const written = plainSlip(answer, factors, right.replace(".", "").length, random).toFixed(decimals);
        if (written === right) continue;
        claims += 1;
        if (checkFigure(plan, path, { written, unit }).above.length > 0) named += 1;
      }
    }
    expect(claims).toBeGreaterThan(100);
    expect(named / claims).toBeLessThan(0.03);
  });
});
