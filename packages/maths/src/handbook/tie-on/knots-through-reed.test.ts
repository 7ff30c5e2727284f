import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { faultsOf } from "#ci/faults-of.js";
import { commonPractice } from "#ci/sources.js";
import type { Length } from "../../units/index.js";
import { cottonCount, metricCount, millimetres } from "../../units/index.js";
import { diameterByPeirce } from "../yarn/index.js";
import type { KnotsThroughReed } from "./index.js";
import { knotsThroughReed } from "./index.js";

const knot = "overhand of both ends";
const across = (cotton: number): Length => diameterByPeirce({ count: cottonCount(cotton) });

describe("knots of the hall napkins", () => {
  // 2-ply of 8 cotton is 4s: 25.4 ÷ (28 × 2) = 0.4536 mm; 1.6 ÷ 0.4536 = 3.53, of which 0.7 is 2.47 and 1.3 is 4.59.
  const threads = { oldDiameter: across(4), newDiameter: across(4), endsInDent: 2 };
  const space = millimetres("1.6");

  it("pass, or pass with easing, and two threads lie side by side in a dent", () => {
    const found = knotsThroughReed({ space, ...threads, knot });
    expect([found.clearance, found.from, found.to].map((q) => q.toFixed(2))).toEqual(["3.53", "2.47", "4.59"]);
    expect(found).toMatchObject({ needs: 3.8, grades: ["passes", "passes with easing"], standing: "free" });
    expect(found.sideBySide.in(millimetres)).toBeCloseTo(0.907, 3);
    expect(found.says).not.toContain("side by side");
  });

  it("are judged by the thickest thread, old or new, never by the mean", () => {
    const thickOld = knotsThroughReed({ space, ...threads, oldDiameter: millimetres(1), knot });
    const thickNew = knotsThroughReed({ space, ...threads, newDiameter: millimetres(1), knot });
    expect([thickOld.clearance, thickNew.clearance]).toEqual([1.6, 1.6]);
    // Thick old threads crowd nobody: they are gone when the new ones lie in the dent.
    expect(thickOld).toMatchObject({ grades: ["expect sticking"], standing: "check" });
    expect(thickOld.says).not.toContain("side by side");
    expect(thickNew.says).toContain("2 new threads side by side take 2 mm of 1.6 mm");
  });
});

describe("knots of 2-ply of 3 metric in a gap of a millimetre", () => {
  it("will not pass, twice over, with what to do instead", () => {
    // 1.5 Nm is 0.8858s cotton: 25.4 ÷ (28 × √0.8858) = 0.9638 mm; 1 ÷ 0.9638 = 1.04; 1.3 × 1.0376 = 1.35 < 2.
    const wool = across(metricCount("1.5").in(cottonCount));
    const threads = { oldDiameter: wool, newDiameter: wool, endsInDent: 2 };
    const found = knotsThroughReed({ space: millimetres(1), ...threads, knot });
    expect(found.clearance.toFixed(2)).toBe("1.04");
    expect(found).toMatchObject({ grades: ["will not pass"], standing: "must" });
    // 0.7 × 1.928 = 1.349 mm, and there is 1 mm.
    expect(found.sideBySide.in(millimetres) * 0.7).toBeCloseTo(1.349, 3);
    expect(found.says).toBe(
      "A dent is 1.0 threads wide, between 0.7 and 1.3 as far as it can be reckoned; this knot needs 3.8 to pass untouched. 2 new threads side by side take 1.928 mm of 1 mm. The knots will not pass. Tie behind the heddles, or behind the reed, if the knots pass what they meet there, or thread afresh.",
    );
  });
});

describe("two threads of 0.6 mm in a dent of a reed of ten an inch, six tenths of it free", () => {
  const threads = { oldDiameter: millimetres("0.6"), newDiameter: millimetres("0.6"), endsInDent: 2 };
  const given = { space: millimetres("1.524"), ...threads, knot } as const;
  // 25.4 ÷ 10 × 0.6 = 1.524 mm; 1.524 ÷ 0.6; 0.7 and 1.3 of it.
  for (const [what, exact, field] of [
    ["clearance", "2.54", "clearance"],
    ["least clearance", "1.778", "from"],
    ["greatest clearance", "3.302", "to"],
  ] as const)
    cited(
      `${what} of a thread of 0.6 mm in a gap of 1.524 mm`,
      byHand(commonPractice, exact),
      knotsThroughReed,
      [given],
      field,
    );
});

describe("the grade of a knot", () => {
  const judged = (space: string, endsInDent = 1): KnotsThroughReed => {
    const threads = { oldDiameter: millimetres(1), newDiameter: millimetres(1), endsInDent };
    return knotsThroughReed({ space: millimetres(space), ...threads, knot });
  };

  it("is sticking alone below half of what it needs, 1.9, and none below 1.539", () => {
    expect(judged("1.539").grades).toEqual(["expect sticking"]);
    expect(judged("1.899")).toMatchObject({ grades: ["expect sticking"], standing: "check" });
    expect(judged("1.9").grades).toEqual(["passes with easing", "expect sticking"]);
    expect(judged("1.538").grades).toEqual(["will not pass"]);
  });

  it("asks for a look where the threads of a dent crowd, and is none where even thin ones would", () => {
    expect(judged("5", 5)).toMatchObject({ standing: "free" });
    expect(judged("4.9", 5)).toMatchObject({ standing: "check" });
    expect(judged("3.5", 5)).toMatchObject({ standing: "check" });
    expect(judged("3.499", 5)).toMatchObject({ grades: ["will not pass"], standing: "must" });
  });

  it("never is worse in a wider gap", () => {
    const order = ["will not pass", "expect sticking", "passes with easing", "passes"];
    const best = (gap: number): number => order.indexOf(judged(String(gap / 100), 2).grades[0] ?? "");
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 900 }), fc.integer({ min: 0, max: 500 }), (gap, more) => {
        expect(best(gap + more)).toBeGreaterThanOrEqual(best(gap));
      }),
    );
  });

  it("is refused for a dent of no thread, of no space, and for what is not told", () => {
    const threads = { oldDiameter: millimetres(1), newDiameter: millimetres(1), knot };
    expect(codesOf(knotsThroughReed, { ...threads, space: millimetres(2), endsInDent: 0 })).toEqual([
      "out-of-range endsInDent",
    ]);
    const none = { space: millimetres(0) };
    const fields = ["oldDiameter", "newDiameter", "endsInDent", "knot"];
    expect(codesOf(knotsThroughReed, none)).toEqual([
      "out-of-range space",
      ...fields.map((field) => `missing ${field}`),
    ]);
    expect(faultsOf(knotsThroughReed, none)).toEqual([
      "knotsThroughReed({ space }): a length of more than 0",
      "knotsThroughReed({ oldDiameter }): a length",
      "knotsThroughReed({ newDiameter }): a length",
      "knotsThroughReed({ endsInDent }): a whole number of ends in a dent",
      `knotsThroughReed({ knot }): "overhand of both ends" or "overhand of one end" or "square" or "weaver's"`,
    ]);
  });
});
