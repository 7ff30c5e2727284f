import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { gateTextile } from "#ci/sources.js";
import { centimetres, millimetres, percentAdded } from "../../units/index.js";
import { peirceCloth } from "./peirce-cloth.js";

/** 30 and 15 tex of cotton by the coefficient 0.00444, at 25 ends and 28 picks to the centimetre. */
const examined = {
  endSpacing: centimetres("0.04"),
  pickSpacing: centimetres("0.03571428571428571428571428571428571428571"),
  warpDiameter: centimetres("0.01959671321500543955870283268934315395619"),
  weftDiameter: centimetres("0.0138569688032983756004969969627711974885"),
  warpCrimp: percentAdded(12),
};

describe("a plain weave", () => {
  cited(
    "weft crimp from 12 % in the warp, in full",
    published(
      gateTextile,
      "2008, Q72",
      "10.26",
      "9.774393383593283415960704512617370534855",
      "the key keeps to a short rule with the factor 4/3; the working beside it takes 1.36",
    ),
    peirceCloth,
    [examined],
    ["weft.crimp", percentAdded],
  );

  const open = {
    endSpacing: millimetres("0.6"),
    pickSpacing: millimetres("0.6"),
    warpDiameter: millimetres("0.2"),
    weftDiameter: millimetres("0.3"),
    warpCrimp: percentAdded(9),
  };

  it("shares both diameters out between its waves, and turned a quarter has the crimp of the warp in its weft", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 100 }), fc.integer({ min: 52, max: 70 }), (tenths, hundredths) => {
        const pickSpacing = millimetres(`${String(hundredths)}e-2`);
        const cloth = { ...open, pickSpacing, warpCrimp: percentAdded(`${String(tenths)}e-1`) };
        const { warp, weft, thickness } = peirceCloth(cloth);
        const [high, low] = [warp.height.in(millimetres), weft.height.in(millimetres)];
        expect(high + low).toBeCloseTo(0.5, 12);
        expect(thickness.in(millimetres)).toBeCloseTo(Math.max(high + 0.2, low + 0.3), 12);
        const turned = peirceCloth({
          endSpacing: cloth.pickSpacing,
          pickSpacing: cloth.endSpacing,
          warpDiameter: cloth.weftDiameter,
          weftDiameter: cloth.warpDiameter,
          warpCrimp: weft.crimp,
        });
        expect(turned.weft.crimp.in(percentAdded)).toBeCloseTo(tenths / 10, 9);
        expect(turned.thickness.in(millimetres)).toBeCloseTo(thickness.in(millimetres), 9);
      }),
      { numRuns: 15 },
    );
  });

  it("of a straight warp has its weft bent a quarter turn round it, where the ends lie both diameters apart", () => {
    // A quarter turn of 0.5 mm, π ÷ 4 mm of thread on 0.5 mm of cloth: a crimp of π ÷ 2 − 1. The weft stands at 0.5 + 0.3 mm.
    const touching = { ...open, endSpacing: millimetres("0.5"), warpCrimp: percentAdded(0) };
    const { warp, weft, thickness } = peirceCloth(touching);
    expect([warp.angle, warp.height.in(millimetres), thickness.in(millimetres)]).toEqual([0, 0, 0.8]);
    expect(weft.angle).toBeCloseTo(90, 10);
    expect(weft.crimp.in(percentAdded)).toBeCloseTo(100 * (Math.PI / 2 - 1), 10);
    expect(codesOf(peirceCloth, { ...touching, endSpacing: millimetres("0.499") })).toEqual(["no-answer endSpacing"]);
  });

  it.each([
    ["more crimp than so close picks leave room for", { pickSpacing: millimetres("0.2") }, "no-answer warpCrimp"],
    ["ends closer than jammed", { endSpacing: millimetres("0.2") }, "no-answer endSpacing"],
    ["a thread of no thickness", { warpDiameter: millimetres(0) }, "out-of-range warpDiameter"],
    ["a crimp as a plain number", { warpCrimp: 9 }, "wrong-kind warpCrimp"],
  ])("is refused for %s", (_, change, code) => {
    expect(codesOf(peirceCloth, { ...open, ...change })).toEqual([code]);
  });
});
