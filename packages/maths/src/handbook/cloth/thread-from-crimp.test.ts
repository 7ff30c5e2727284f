import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
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
  });
  it("is bent a quarter turn at the most, of threads both diameters apart: a crimp of π ÷ 2 − 1", () => {
    // π ÷ 2 = 1.57079632679489661923132169163975144209858… of thread on 1 of cloth.
    const touching = { spacing: millimetres(1), diameters: millimetres(1) };
    const full = threadFromCrimp({ ...touching, crimp: percentAdded("57.07963267948966192313216916397514420985") });
    expect(full.angle).toBeCloseTo(90, 8);
    expect(full.height.in(millimetres)).toBeCloseTo(1, 8);
    expect(codesOf(threadFromCrimp, { ...touching, crimp: percentAdded("57.0797") })).toEqual(["no-answer crimp"]);
  });
  it.each([
    [
      "a height for the crimp",
      { height: millimetres("0.5"), crimp: undefined },
      ["missing crimp", "unknown-field height"],
    ],
    ["threads that lie on each other", { spacing: millimetres(0) }, ["out-of-range spacing"]],
    ["threads of no thickness", { diameters: millimetres(0) }, ["out-of-range diameters"]],
    ["more crimp than round threads take up", { crimp: percentAdded(58) }, ["no-answer crimp"]],
  ])("is not bent by %s", (_, change, codes) => {
    const sound = { spacing: millimetres(1), crimp: percentAdded(5), diameters: millimetres(1) };
    expect(new Set(codesOf(threadFromCrimp, { ...sound, ...change }))).toEqual(new Set(codes));
  });
});
