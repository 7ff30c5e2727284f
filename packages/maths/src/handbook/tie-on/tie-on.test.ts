import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { faultsOf } from "#ci/faults-of.js";
import { commonPractice } from "#ci/sources.js";
import { cottonCount, dentsPerInch, endsPerInch, tex, worstedCount } from "../../units/index.js";
import { tieOn } from "./tie-on.js";

const old = { ends: 384, sett: endsPerInch(20), threading: [1, 2, 3, 4], count: cottonCount(4) };
const same = { ...old, edges: [96, 288, 384] };

function about(
  subject: string,
  now: Parameters<typeof tieOn>[1],
): ReturnType<typeof tieOn>["findings"][number] | undefined {
  return tieOn(old, now).findings.find((finding) => finding.about === subject);
}

describe("a new warp held against the old one", () => {
  // 97 = 24 × 4 + 1 and 306 = 76 × 4 + 2 lie inside a repeat, 200 = 50 × 4 closes one; the last edge is the warp's own.
  cited(
    "stripe edges 97, 200 and 306 held against repeats of four",
    byHand(commonPractice, "-2"),
    tieOn,
    [old, { ...same, edges: [97, 200, 306, 384] }],
    "findings.4.difference",
  );

  it("fits where ends, threading, sett and yarn agree and every edge closes a repeat", () => {
    const { verdict, findings } = tieOn(old, same);
    expect(verdict).toBe("fits");
    expect(findings.every(({ agrees }) => agrees)).toBe(true);
  });

  it("does not fit with one end more or fewer, and says how many", () => {
    expect(tieOn(old, { ...same, ends: 385 }).verdict).toBe("does not fit");
    expect(about("ends", { ...same, ends: 385 })).toMatchObject({ standing: "must", difference: 1 });
    expect(about("ends", { ...same, ends: 383 })?.says).toBe(
      "The new warp is 1 end short: so many old ends are left without a partner.",
    );
  });

  it("does not fit another threading repeat", () => {
    expect(tieOn(old, { ...same, threading: [1, 2, 3, 4, 3, 2] }).verdict).toBe("does not fit");
  });

  it("names every place where the threadings part", () => {
    expect(about("threading", { ...same, threading: [1, 2, 4, 3] })?.says).toBe(
      "The new plan counts on another threading, place 3 on shaft 4, not 3, place 4 on shaft 3, not 4: the threading stays as it is.",
    );
  });

  it("wants a look where the sett or the yarn differs", () => {
    expect(tieOn(old, { ...same, sett: endsPerInch(18) }).verdict).toBe("check");
    expect(about("sett", { ...same, sett: endsPerInch(18) })?.difference).toMatchObject({
      value: "-2",
      unit: "endsPerInch",
    });
    // 4 cotton is 6 worsted; 8 worsted is three quarters of its weight for the same length.
    expect(tieOn(old, { ...same, count: worstedCount(6) }).verdict).toBe("fits");
    expect(tieOn({ ...old, count: cottonCount(20) }, { ...same, count: worstedCount(30) }).verdict).toBe("fits");
    expect(about("grist", { ...same, count: worstedCount(8) })?.says).toContain("about 75 %");
    expect(about("grist", { ...same, count: tex(300) })?.says).toContain("heavier");
  });

  it("names every edge that falls inside a threading repeat, with its place, and still fits", () => {
    const report = tieOn(old, { ...same, edges: [97, 200, 306, 384] });
    expect(report.verdict).toBe("fits");
    expect(report.findings.at(-1)?.says).toBe(
      "2 stripe edges of 3 inside a threading repeat of 4 ends: end 97 at place 1, end 306 at place 2.",
    );
  });

  it("gives the width of each in the reed as a step to be explained", () => {
    expect(tieOn(old, same).steps.map(({ calculation, input }) => String(calculation(input)))).toEqual([
      "19.2 in",
      "19.2 in",
    ]);
  });

  it("finds the same for any two warps, whichever way round the ends differ", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2000 }), fc.integer({ min: 1, max: 2000 }), (a, b) => {
        const there = tieOn({ ...old, ends: a }, { ...old, ends: b, edges: [b] });
        const back = tieOn({ ...old, ends: b }, { ...old, ends: a, edges: [a] });
        expect(there.verdict).toBe(a === b ? "fits" : "does not fit");
        expect(back.verdict).toBe(there.verdict);
      }),
    );
  });

  it("fits with one knot, where both warps are a single end", () => {
    const one = { ...old, ends: 1 };
    const { verdict, findings } = tieOn(one, { ...one, edges: [1] });
    expect([verdict, findings[0]?.says]).toEqual(["fits", "Both warps have 1 end: one knot to each."]);
    // Its one edge is that of the warp itself, and lies inside nothing.
    expect(findings[4]).toMatchObject({ agrees: true, old: 0, new: 0 });
  });

  it("is refused with all that is wrong in one error", () => {
    const faulty = { ends: 0, sett: dentsPerInch(10), threading: [1.5], count: endsPerInch(3), edges: [] };
    expect(codesOf((now) => tieOn(old, now), faulty)).toEqual([
      "out-of-range newWarp.ends",
      "wrong-kind newWarp.sett",
      "not-whole newWarp.threading.0",
      "wrong-kind newWarp.count",
      "empty newWarp.edges",
    ]);
    expect(faultsOf((nothing) => tieOn(nothing, nothing), { ends: 0, threading: [1, 0, 1001] })).toEqual([
      "tieOn({ oldWarp.ends }): a whole number of ends, 1 or more",
      "tieOn({ oldWarp.sett }): a sett",
      "tieOn({ oldWarp.threading[1] }): a whole number of shafts, 1 or more",
      "tieOn({ oldWarp.threading[2] }): a whole number of shafts, no more than 1000",
      "tieOn({ oldWarp.count }): a yarn count",
      "tieOn({ newWarp.ends }): a whole number of ends, 1 or more",
      "tieOn({ newWarp.sett }): a sett",
      "tieOn({ newWarp.threading[1] }): a whole number of shafts, 1 or more",
      "tieOn({ newWarp.threading[2] }): a whole number of shafts, no more than 1000",
      "tieOn({ newWarp.count }): a yarn count",
      "tieOn({ newWarp.edges }): a list of at least one, each a whole number of ends",
    ]);
    expect(codesOf((now) => tieOn(old, now), { ...same, edges: [0] })).toEqual(["out-of-range newWarp.edges.0"]);
    expect(faultsOf((now) => tieOn(old, now), { ...same, edges: [0] })).toEqual([
      "tieOn({ newWarp.edges[0] }): a whole number of ends, 1 or more",
    ]);
  });
});
