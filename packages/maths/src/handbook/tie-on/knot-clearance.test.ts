import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { inches, millimetres } from "../../units/index.js";
import { knotClearance } from "./knot-clearance.js";

describe("the clearance of a knot", () => {
  // 1.5 ÷ 0.6 = 2.5; 2 ÷ 0.5 = 4; an inch is 25.4 mm, and 25.4 ÷ 12.7 = 2.
  const rows = [
    [
      "a new thread of 0.6 mm on an old one of 0.4 mm",
      "2.5",
      millimetres("1.5"),
      millimetres("0.4"),
      millimetres("0.6"),
    ],
    ["a new thread of 0.4 mm on an old one of 0.5 mm", "4", millimetres(2), millimetres("0.5"), millimetres("0.4")],
    ["a gap of an inch for an old thread of 12.7 mm", "2", inches(1), millimetres("12.7"), millimetres(1)],
  ] as const;
  for (const [title, exact, space, oldDiameter, newDiameter] of rows)
    cited(title, byHand(commonPractice, exact), knotClearance, [{ space, oldDiameter, newDiameter }]);

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
