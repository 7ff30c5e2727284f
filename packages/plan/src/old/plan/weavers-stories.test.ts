import { readFileSync } from "node:fs";
import { check, inches, ounces, percentLost, warpLength, yards } from "@thrum/maths";
import { describe, expect, it } from "vitest";
import type { Job } from "../job/job.js";
import { readJob } from "../job/read-job.js";
import { planWarp } from "./plan-warp.js";

function napkins(): Job {
  const reading = readJob(readFileSync("examples/hall-napkins/job.yaml", "utf8"));
  if (!reading.ok) throw new Error("the example's job cannot be read");
  return reading.job;
}

/** Six tray cloths on 420 ends: the sample is woven from the waste in front, 10 in of it. */
function trayCloths(waste: { readonly front: number; readonly behind: number }): Job {
  const base = napkins();
  const yarn = { count: 8, system: "cotton", plies: 2, counted: "single" } as const;
  const packed = { ...yarn, onHand: ounces(0), package: ounces(8) };
  return {
    ...base,
    oldWarp: { ...base.oldWarp, ends: 420 },
    newWarp: {
      ...base.newWarp,
      takeUp: percentLost(5),
      wasteInFront: inches(waste.front + 10),
      wasteBehind: inches(waste.behind),
    },
    pieces: {
      number: 6,
      finishedLength: inches(28),
      hemEachEnd: inches("1.25"),
      loomToFinished: percentLost(12),
      widthReedToFinished: percentLost(14),
    },
    weft: { yarn: "white", picksAtLoom: { picks: 20, in: "1 inch" } },
    yarns: { white: packed, plum: packed },
    stripes: [
      { colour: "white", ends: 60 },
      {
        repeat: 5,
        of: [
          { colour: "plum", ends: 20 },
          { colour: "white", ends: 40 },
        ],
      },
      { colour: "plum", ends: 60 },
    ],
    winding: { ...base.winding, mostEndsInChain: 140 },
  };
}

describe("the same tray cloths in new colours", () => {
  it("take 7.19 yd without what the old warp spares, and less by the part behind only", () => {
    // (28 + 2 × 1.25) × 6 = 183; ÷ 0.88 = 207.9545; ÷ 0.95 = 218.8995; + 30 + 10 = 258.8995 in; ÷ 36 = 7.19165 yd.
    const none = planWarp(trayCloths({ front: 30, behind: 0 }));
    expect(none.warpLength.in(yards).toFixed(2)).toBe("7.19");
    expect(none.position.spared.in(inches)).toBe(0);
    // Of the 30 in of waste 18 lie behind: 258.8995 − 18 = 240.8995 in = 6.69165 yd; 420 × 18 in = 7560 in = 210 yd.
    const spared = planWarp(trayCloths({ front: 12, behind: 18 }));
    expect(spared.warpLength.in(yards)).toBeCloseTo(6.69165, 5);
    expect(spared.position.sparedYarn.in(yards)).toBe(210);
  });

  it("keep their 420 ends and their width", () => {
    const plan = planWarp(trayCloths({ front: 12, behind: 18 }));
    // 60 + 5 × (20 + 40) + 60 = 420; ÷ 20 = 21 in; × 0.86 = 18.06 in.
    expect(plan.ends).toBe(420);
    expect(plan.fit.findings.find(({ about }) => about === "ends")?.agrees).toBe(true);
    expect(plan.finishedWidth.in(inches)).toBeCloseTo(18.06, 10);
  });
});

describe("a door curtain wider than the warp before it", () => {
  /** 182 ends on the loom, 206 wanted. */
  function curtain(spare: readonly number[], emptyDents: number): Job {
    const base = napkins();
    const oldWarp = {
      ...base.oldWarp,
      ends: 182,
      emptyDents: { beforeFirst: emptyDents, afterLast: emptyDents },
      spareHeddles: { beforeFirst: spare, afterLast: spare },
    };
    const stripes = [
      { colour: "natural", ends: 50 },
      { colour: "madder", ends: 53 },
      { colour: "indigo", ends: 53 },
      { colour: "natural", ends: 50 },
    ];
    return { ...base, oldWarp, stripes };
  }

  it("takes 12 ends more at each side, where heddles and dents are there for them", () => {
    // 206 − 182 = 24; 12 at each side are 3 on each of 4 shafts, and 6 dents at 2 to the dent.
    const { joinable, fit } = planWarp(curtain([3, 3, 3, 3], 6));
    expect(joinable.sides.difference).toBe(24);
    for (const side of joinable.sides.sides) {
      expect(side).toMatchObject({ ends: 12, dents: 6, heddles: [3, 3, 3, 3], dentsLeft: 0, shortages: [] });
    }
    expect(fit.verdict).toBe("check");
  });

  it("is not begun with a heddle or a dent too few: the plan says which", () => {
    const heddle = planWarp(curtain([3, 3, 2, 3], 6));
    expect(heddle.fit.verdict).toBe("does not fit");
    expect(heddle.joinable.sides.sides.map(({ heddlesLeft }) => heddlesLeft[2])).toEqual([-1, -1]);
    const dent = planWarp(curtain([3, 3, 3, 3], 5));
    expect(dent.fit.verdict).toBe("does not fit");
    expect(dent.joinable.sides.sides.map(({ dentsLeft }) => dentsLeft)).toEqual([-1, -1]);
  });

  it("closes with its stripes on the 206 ends", () => {
    const { joining, ends } = planWarp(curtain([3, 3, 3, 3], 6));
    expect(ends).toBe(206);
    expect(joining.at(-1)).toMatchObject({ colour: "natural", lastEnd: 206, dent: 103 });
  });
});

describe("a weaver who says 7.09 yd", () => {
  const input = {
    pieces: 6,
    finishedLength: inches(28),
    hemEachEnd: inches("1.25"),
    loomToFinished: percentLost(12),
    takeUp: percentLost(5),
    loomWaste: inches(40),
  };

  it("has added the percentages, and is told so, with 7.19 and what each tray cloth would lack", () => {
    // 183 × 1.12 × 1.05 + 40 = 255.208 in = 7.08911 yd; 258.8995 − 255.208 = 3.6915 in short, of 6 at 0.88 × 0.95 each 0.514 in.
    const found = check(warpLength, input, { written: "7.09", unit: yards });
    expect(found).toMatchObject({ right: false, rounded: "7.19", cost: "finished length about 1/2 in short" });
    expect(found.right ? null : found.slips[0]).toMatchObject({
      says: "a sum that adds each of loom to finished and take-up instead of dividing it out gives this",
    });
  });
});
