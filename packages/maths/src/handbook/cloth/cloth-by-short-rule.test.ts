import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { gateTextile } from "#ci/sources.js";
import { centimetres, millimetres, percentAdded } from "../../units/index.js";
import { clothByShortRule } from "./cloth-by-short-rule.js";

/** 30 and 15 tex of cotton by the coefficient 0.00444, at 25 ends and 28 picks to the centimetre. */
const examined = {
  endSpacing: centimetres("0.04"),
  pickSpacing: centimetres("0.03571428571428571428571428571428571428571"),
  warpDiameter: centimetres("0.01959671321500543955870283268934315395619"),
  weftDiameter: centimetres("0.0138569688032983756004969969627711974885"),
  warpCrimp: percentAdded(12),
};

/** The shirting of 2010: warp 0.01627 cm, weft 0.013016 cm, 24.849 ends and 25.014 picks to the centimetre. */
const shirting = {
  endSpacing: centimetres("0.04024264335092705828332293841488538819195"),
  pickSpacing: centimetres("0.03997730724092094581112520475500702299508"),
  warpDiameter: centimetres("0.01627"),
  weftDiameter: centimetres("0.013016"),
  warpCrimp: percentAdded(10),
};

describe("a plain weave", () => {
  cited(
    "weft crimp from 12 % in the warp, by the factor 4/3",
    published(
      gateTextile,
      "2008, Q72",
      "10.26",
      "10.10996749573821097766631655383313930713",
      "the density of 1.54 is given; 10.24 comes of 1.53",
    ),
    clothByShortRule,
    [{ ...examined, factor: 4 / 3 }],
    ["weftCrimp", percentAdded],
  );
  cited(
    "weft crimp from 12 % in the warp, by the factor 1.36",
    published(
      gateTextile,
      "2008, Q72, working",
      "10.26",
      "9.34296268583563831355004353005346031432",
      "misprint: the factor 1.36 of the working does not lead to the key",
    ),
    clothByShortRule,
    [{ ...examined, factor: 1.36 }],
    ["weftCrimp", percentAdded],
  );
  const unequal = {
    endSpacing: millimetres("0.4"),
    pickSpacing: millimetres("0.4"),
    warpDiameter: millimetres("0.2"),
    weftDiameter: millimetres("0.3"),
    warpCrimp: percentAdded(9),
  };
  cited(
    "thickness of a cloth whose weft stands higher",
    published(
      gateTextile,
      "2011, Q39",
      "0.36",
      "0.64",
      "misprint: only the warp is looked at; the weft stands at 0.34 + 0.3",
    ),
    clothByShortRule,
    [{ ...unequal, factor: 4 / 3 }],
    ["thickness", millimetres],
  );
  cited(
    "thickness of a shirting",
    published(gateTextile, "2010, Q50", "0.033", "0.03312591274688691960705768176880110712677"),
    clothByShortRule,
    [{ ...shirting, factor: 4 / 3 }],
    ["thickness", centimetres],
  );

  it("shares both diameters out between the waves by the short rule, and is as thick as the higher thread", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 30 }), fc.integer({ min: 10, max: 60 }), (percent, hundredths) => {
        const cloth = { ...unequal, endSpacing: millimetres(`${String(hundredths)}e-2`) };
        const found = clothByShortRule({ ...cloth, warpCrimp: percentAdded(percent), factor: 4 / 3 });
        const [warp, weft] = [found.warpHeight, found.weftHeight].map((height) => height.in(millimetres)) as [
          number,
          number,
        ];
        expect(warp + weft).toBeCloseTo(0.5, 12);
        expect(found.thickness.in(millimetres)).toBeCloseTo(Math.max(warp + 0.2, weft + 0.3), 12);
        // The weft put in again: a wave of the weft crimp found, by the same rule.
        const crimp = found.weftCrimp.in(percentAdded) / 100;
        expect((4 / 3) * (hundredths / 100) * Math.sqrt(crimp)).toBeCloseTo(weft, 10);
      }),
    );
  });

  it("by the short rule bends its weft alone where the warp lies straight, and its warp alone at the most crimp", () => {
    // Both diameters are 0.5 mm and 1.25 × 0.4 mm is 0.5 mm: √crimp is 1 for the one that does all the bending.
    const rule = { ...unequal, factor: 1.25 };
    const straight = clothByShortRule({ ...rule, warpCrimp: percentAdded(0) });
    expect([straight.warpHeight.in(millimetres), straight.weftHeight.in(millimetres)]).toEqual([0, 0.5]);
    expect([straight.weftCrimp.in(percentAdded), straight.thickness.in(millimetres)]).toEqual([100, 0.8]);
    const full = clothByShortRule({ ...rule, warpCrimp: percentAdded(100) });
    expect([full.warpHeight.in(millimetres), full.weftCrimp.in(percentAdded)]).toEqual([0.5, 0]);
    expect(full.thickness.in(millimetres)).toBe(0.7);
    expect(codesOf(clothByShortRule, { ...rule, warpCrimp: percentAdded("100.001") })).toEqual(["no-answer warpCrimp"]);
  });

  it.each([
    ["ends that lie on each other", { endSpacing: millimetres(0) }, "out-of-range endSpacing"],
    ["a thread of no thickness", { weftDiameter: millimetres(0) }, "out-of-range weftDiameter"],
    ["a factor of nothing", { factor: 0 }, "out-of-range factor"],
    ["a diameter as a plain number", { warpDiameter: 0.2 }, "wrong-kind warpDiameter"],
  ])("by the short rule is refused for %s", (_, change, code) => {
    expect(codesOf(clothByShortRule, { ...unequal, factor: 4 / 3, ...change })).toEqual([code]);
  });
});
