import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { textileNotes } from "#ci/sources.js";
import { denier, tex } from "../../units/index.js";
import { filamentCount } from "./filament-count.js";
import { resultantCountDirect } from "./resultant-count-direct.js";

describe("the count of one filament", () => {
  cited(
    "of 70 den f34",
    published(
      textileNotes,
      "Designation of yarns after the ASTM practice",
      "2.97",
      "35/17",
      "misprint: 70 ÷ 34 is 2.06",
    ),
    filamentCount,
    [{ count: denier(70), filaments: 34 }],
    denier,
  );

  it("times the filaments is the count of the yarn", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 900 }), fc.integer({ min: 1, max: 300 }), (number, filaments) => {
        const count = filamentCount({ count: denier(number), filaments });
        expect(resultantCountDirect({ count, plies: filaments }).in(denier)).toBeCloseTo(number, 9);
      }),
    );
  });

  it("of a monofilament is that of the yarn", () => {
    expect(filamentCount({ count: tex(30), filaments: 1 }).value).toBe("30");
  });

  it("is refused for half a filament and for none", () => {
    expect(() => filamentCount({ count: tex(30), filaments: 0.5 })).toThrow("filaments");
    expect(() => filamentCount({ count: tex(30), filaments: 0 })).toThrow("filaments");
  });
});
