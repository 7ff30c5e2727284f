import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { commonPractice } from "#ci/sources.js";
import { dentsPerInch, inches, millimetres, percentOf } from "../../units/index.js";
import { knotsThroughReed } from "./knots-through-reed.js";
import { spaceInDent } from "./space-in-dent.js";

describe("the free space in a dent", () => {
  // 25.4 mm ÷ 11 × 60 %
  cited(
    "three fifths of eleven dents to the inch",
    byHand(commonPractice, "1524/1100"),
    spaceInDent,
    [{ reed: dentsPerInch(11), open: percentOf(60) }],
    millimetres,
  );

  it("lets overhand knots of both ends in 8/2 cotton through eleven dents to the inch with no more than easing", () => {
    // Common practice, no source. Diameter of 8/2 cotton: 25.4 ÷ (28 √4).
    const thread = millimetres("0.453571428571");
    const found = knotsThroughReed({
      space: spaceInDent({ reed: dentsPerInch(11), open: percentOf(60) }),
      oldDiameter: thread,
      newDiameter: thread,
      endsInDent: 1,
      knot: "overhand of both ends",
    });
    expect(found.clearance).toBeCloseTo(3.0545, 3);
    expect([found.from, found.to].map((q) => q.toFixed(1))).toEqual(["2.1", "4.0"]);
    expect(found.grades).toEqual(["passes", "passes with easing"]);
    expect(found.says).toContain("Tie one and draw it through one dent.");
  });
});

describe("the limits of space in dent", () => {
  limits(
    spaceInDent,
    ["is the whole pitch of a reed without wires", { reed: dentsPerInch(10), open: percentOf(100) }, 0.1, inches],
    { reed: dentsPerInch(0), open: percentOf(101) },
  );
});
