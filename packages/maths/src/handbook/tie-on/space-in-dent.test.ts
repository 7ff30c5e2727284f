import { describe, expect, it } from "vitest";
import { dentsPerInch, millimetres, percentOf } from "../../units/index.js";
import type { KnotsThroughReedInput } from "./knots-through-reed.js";
import { knotsThroughReed } from "./knots-through-reed.js";
import { spaceInDent } from "./space-in-dent.js";

describe("knots through the reed", () => {
  const knot = "overhand of both ends";
  const thread = (millimetre: string): Pick<KnotsThroughReedInput, "oldDiameter" | "newDiameter" | "endsInDent"> => ({
    oldDiameter: millimetres(millimetre),
    newDiameter: millimetres(millimetre),
    endsInDent: 1,
  });
  it("of two-strand overhand in 8/2 cotton go through eleven dents to the inch with no more than easing", () => {
    // Common practice, no source. Diameter of 8/2 cotton: 25.4 ÷ (28 √4).
    const space = spaceInDent({ reed: dentsPerInch(11), open: percentOf(60) });
    const found = knotsThroughReed({ space, ...thread("0.453571428571"), knot });
    expect(found.clearance).toBeCloseTo(3.0545, 3);
    expect([found.from, found.to].map((q) => q.toFixed(1))).toEqual(["2.1", "4.0"]);
    expect(found.grades).toEqual(["passes", "passes with easing"]);
    expect(found.says).toContain("Tie one and draw it through one dent.");
  });
});
