import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inches, millimetres } from "../../units/index.js";
import { knotClearance } from "./knot-clearance.js";

describe("the clearance of a knot", () => {
  it("is counted in diameters of the thicker thread, whichever it is", () => {
    // By hand: 1.5 ÷ 0.6 = 2.5, and 2 ÷ 0.5 = 4.
    const thickerNew = { space: millimetres("1.5"), oldDiameter: millimetres("0.4"), newDiameter: millimetres("0.6") };
    expect(knotClearance(thickerNew)).toBe(2.5);
    expect(
      knotClearance({ space: millimetres(2), oldDiameter: millimetres("0.5"), newDiameter: millimetres("0.4") }),
    ).toBe(4);
    // By hand: 1 in is 25.4 mm; 25.4 ÷ 12.7 = 2.
    expect(knotClearance({ space: inches(1), oldDiameter: millimetres("12.7"), newDiameter: millimetres(1) })).toBe(2);
  });

  it("does not change when the two threads change places, and is never more than of either alone", () => {
    const hundredths = fc.integer({ min: 1, max: 500 }).map((n) => millimetres(String(n / 100)));
    fc.assert(
      fc.property(hundredths, hundredths, hundredths, (space, one, other) => {
        const clearance = knotClearance({ space, oldDiameter: one, newDiameter: other });
        expect(knotClearance({ space, oldDiameter: other, newDiameter: one })).toBe(clearance);
        expect(clearance).toBeLessThanOrEqual(knotClearance({ space, oldDiameter: one, newDiameter: one }));
      }),
    );
  });

  it.each(["space", "oldDiameter", "newDiameter"])("is refused where %s is nothing", (name) => {
    const right = { space: millimetres(1), oldDiameter: millimetres(1), newDiameter: millimetres(1) };
    expect(() => knotClearance({ ...right, [name]: millimetres(0) })).toThrow(name);
  });
});
