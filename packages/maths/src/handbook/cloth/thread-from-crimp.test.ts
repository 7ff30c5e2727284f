import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { balasubramanianCloth } from "#ci/sources.js";
import { millimetres, percentAdded } from "../../units/index.js";
import { threadFromCrimp } from "./thread-from-crimp.js";
import { threadFromHeight } from "./thread-from-height.js";

describe("a square cloth of round threads, jammed", () => {
  const sections = "Jammed Structures, Square cloth";
  cited(
    "a jammed square cloth by the equations, from the crimp",
    published(balasubramanianCloth, sections, "60", "60"),
    threadFromCrimp,
    [
      {
        spacing: millimetres("0.8660254037844386467637231707529361834714"),
        crimp: percentAdded("20.91995761561452337293855050947704881894"),
        diameters: millimetres(1),
      },
    ],
    "angle",
  );
});

describe("a plain weave", () => {
  it("has the crimp back that its waves were worked out from", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 140 }), fc.integer({ min: 10, max: 30 }), (tenths, spacing) => {
        const given = { spacing: millimetres(spacing / 10), diameters: millimetres(1) };
        const bent = threadFromCrimp({ ...given, crimp: percentAdded(tenths / 100) });
        const back = threadFromHeight({ ...given, height: bent.height });
        expect(back.crimp.in(percentAdded)).toBeCloseTo(tenths / 100, 12);
        expect(back.length.in(millimetres)).toBeCloseTo(bent.length.in(millimetres), 12);
      }),
      { numRuns: 25 },
    );
  });
  it("stands straight where it has no crimp", () => {
    const spacing = millimetres(2);
    const straight = threadFromCrimp({ spacing, crimp: percentAdded(0), diameters: millimetres(1) });
    expect(straight.height.in(millimetres)).toBeCloseTo(0, 12);
    expect(threadFromHeight({ spacing, height: millimetres(0), diameters: millimetres(1) }).crimp.value).toBe("0");
  });
});
