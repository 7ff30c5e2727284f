import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { cawsThrums2022 } from "#ci/sources.js";
import { feet, millimetres } from "../../units/index.js";
import { yarnForEnds } from "../warp/index.js";
import type { KnotsThroughReedInput } from "./index.js";
import { knotsThroughReed } from "./index.js";

describe("the old warp to keep", () => {
  cited(
    "thread lost in thrums of six feet",
    published(cawsThrums2022, "opening", "2400", "2400"),
    yarnForEnds,
    [{ ends: 400, warpLength: feet(6) }],
    feet,
  );
});

describe("knots through the reed", () => {
  const knot = "overhand of both ends";
  const thread = (millimetre: string): Pick<KnotsThroughReedInput, "oldDiameter" | "newDiameter" | "endsInDent"> => ({
    oldDiameter: millimetres(millimetre),
    newDiameter: millimetres(millimetre),
    endsInDent: 1,
  });

  it("of thick carpet warp and wool in ten dents may stick, and may pass with easing", () => {
    const space = millimetres("1.524");
    const diameters = { oldDiameter: millimetres("0.6414"), newDiameter: millimetres("0.7043"), endsInDent: 1 };
    const found = knotsThroughReed({ space, ...diameters, knot });
    // 1.524 ÷ 0.7043: the thicker thread decides.
    expect(found.clearance).toBeCloseTo(2.1638, 3);
    expect(found.grades).toEqual(["passes with easing", "expect sticking"]);
  });

  it("are told one grade only where the whole band lies in it", () => {
    expect(knotsThroughReed({ space: millimetres(6), ...thread("1"), knot }).grades).toEqual(["passes"]);
    expect(knotsThroughReed({ space: millimetres("1.6"), ...thread("1"), knot }).grades).toEqual(["expect sticking"]);
    expect(knotsThroughReed({ space: millimetres(1), ...thread("1"), knot }).grades).toEqual(["will not pass"]);
  });

  it("never pass worse through a wider gap", () => {
    const gap = fc.integer({ min: 1, max: 900 });
    fc.assert(
      fc.property(gap, gap, (a, b) => {
        const [narrow, wide] = [Math.min(a, b), Math.max(a, b)].map((n) =>
          knotsThroughReed({ space: millimetres(n / 100), ...thread("0.7"), knot: "square" }),
        );
        expect(wide?.from).toBeGreaterThanOrEqual(narrow?.from ?? Number.NaN);
        if (narrow?.grades.includes("passes")) expect(wide?.grades).toContain("passes");
        if (wide?.grades.includes("expect sticking"))
          expect(["will not pass", "expect sticking"]).toContain(narrow?.grades.at(-1));
      }),
    );
  });
});
