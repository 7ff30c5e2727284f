import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited, published } from "#ci/cited.js";
import { commonPractice, woodhouseKilgour1921 } from "#ci/sources.js";
import { attempt } from "../../engine/refusal.js";
import { cottonCount, grams, juteCount, juteSpyndles, metres, pounds, tex, yards } from "../../units/index.js";
import { countFromWrapping } from "./count-from-wrapping.js";
import { countFromWrappingDirect } from "./count-from-wrapping-direct.js";
import { yarnMassDirect } from "./yarn-mass-direct.js";

describe("a direct count by weighing", () => {
  for (const [title, length, mass, part, count] of [
    ["a bundle of 8 spyndles that weighs 56 lb", juteSpyndles(8), pounds(56), "bundling", "7"],
    ["a bundle of 8 spyndles that weighs 60 lb", juteSpyndles(8), pounds(60), "bundling", "7.5"],
    ["a roll of 14,400 yards that weighs 8 lb", yards(14_400), pounds(8), "winding", "8"],
  ] as const) {
    const input = { length, mass, system: juteCount };
    cited(title, published(woodhouseKilgour1921, part, count, count), countFromWrappingDirect, [input], juteCount);
  }
  cited(
    "100 metres that weigh 2 1/2 grams",
    byHand(commonPractice, "25"),
    countFromWrappingDirect,
    [{ length: metres(100), mass: grams("2.5"), system: tex }],
    tex,
  );

  it("weighs again what was weighed", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 900 }), fc.integer({ min: 1, max: 900 }), (long, heavy) => {
        const count = countFromWrappingDirect({ length: metres(long), mass: grams(heavy), system: tex });
        expect(yarnMassDirect({ length: metres(long), count }).in(grams)).toBeCloseTo(heavy, 9);
      }),
    );
  });

  it("is refused for nothing weighed, and tells the unit of the other kind for what it is", () => {
    const given = { length: metres(100), mass: grams("2.5") };
    expect(() => countFromWrappingDirect({ ...given, mass: grams(0), system: tex })).toThrow("more than 0");
    const indirect = attempt(countFromWrappingDirect, { ...given, system: cottonCount });
    expect(indirect.ok ? null : indirect.faults[0]).toMatchObject({
      code: "wrong-kind",
      received: "the unit cottonCount",
    });
    const direct = attempt(countFromWrapping, { ...given, system: tex });
    expect(direct.ok ? null : direct.faults[0]).toMatchObject({
      code: "wrong-kind",
      received: "the unit tex",
      remedy: "It is a unit of mass per length: take one of length per mass, for example cottonCount.",
    });
  });
});
