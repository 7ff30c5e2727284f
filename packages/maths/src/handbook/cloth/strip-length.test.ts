import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { centimetres, inches, metres, yards } from "../../units/index.js";
import { stripLength } from "./strip-length.js";

describe("yarn cut from cloth", () => {
  cited(
    "2 yards of 36 inches in strips of an inch",
    byHand(commonPractice, "72"),
    stripLength,
    [{ clothLength: yards(2), clothWidth: inches(36), stripWidth: inches(1) }],
    yards,
  );
  cited(
    "a sheet of 2.4 by 2 metres in strips of 2.5 centimetres",
    byHand(commonPractice, "192"),
    stripLength,
    [{ clothLength: metres("2.4"), clothWidth: metres(2), stripWidth: centimetres("2.5") }],
    metres,
  );

  it("covers the cloth again when it is laid side by side", () => {
    const size = { min: 1, max: 900 };
    fc.assert(
      fc.property(fc.integer(size), fc.integer(size), fc.integer({ min: 1, max: 40 }), (long, wide, strip) => {
        const cut = stripLength({ clothLength: inches(long), clothWidth: inches(wide), stripWidth: inches(strip / 8) });
        expect((cut.in(inches) * strip) / 8).toBeCloseTo(long * wide, 6);
      }),
    );
  });

  it("is the cloth itself in one strip, and is refused for a strip of no width", () => {
    const cloth = { clothLength: yards(2), clothWidth: inches(36) };
    expect(stripLength({ ...cloth, stripWidth: inches(36) }).in(yards)).toBe(2);
    expect(() => stripLength({ ...cloth, stripWidth: inches(0) })).toThrow("more than 0");
  });
});
