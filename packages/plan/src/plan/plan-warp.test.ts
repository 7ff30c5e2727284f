import { grams, inches, metres, ounces, percentLost, yards } from "@thrum/maths";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readFileSync } from "node:fs";
import type { Job } from "../job/job.js";
import { readJob } from "../job/read-job.js";
import { planText } from "../text/plan-text.js";
import { planWarp } from "./plan-warp.js";

function napkins(): Job {
  const reading = readJob(readFileSync("examples/hall-napkins/job.yaml", "utf8"));
  if (!reading.ok) throw new Error("the example's job cannot be read");
  return reading.job;
}

/** Whole numbers over whole numbers: a second reckoning that shares nothing with the library. */
type Ratio = readonly [bigint, bigint];
const ratio = (over: number, under = 1): Ratio => [BigInt(over), BigInt(under)];
const plus = (a: Ratio, b: Ratio): Ratio => [a[0] * b[1] + b[0] * a[1], a[1] * b[1]];
const by = (a: Ratio, b: Ratio): Ratio => [a[0] * b[0], a[1] * b[1]];
const over = (a: Ratio, b: Ratio): Ratio => [a[0] * b[1], a[1] * b[0]];
const left = (percent: number): Ratio => ratio(100 - percent, 100);
const ceiling = ([n, d]: Ratio): number => Number((n + d - 1n) / d);
const asNumber = ([n, d]: Ratio): number => Number((n * 10n ** 20n) / d) / 1e20;

const jobs = fc.record({
  pieces: fc.integer({ min: 1, max: 40 }),
  eighths: fc.integer({ min: 8, max: 400 }),
  hemEighths: fc.integer({ min: 0, max: 16 }),
  loomToFinished: fc.integer({ min: 0, max: 40 }),
  takeUp: fc.integer({ min: 0, max: 30 }),
  front: fc.integer({ min: 0, max: 40 }),
  behind: fc.integer({ min: 0, max: 40 }),
  natural: fc.integer({ min: 2, max: 90 }),
  madder: fc.integer({ min: 2, max: 90 }),
  repeat: fc.integer({ min: 1, max: 6 }),
  count: fc.integer({ min: 2, max: 60 }),
  plies: fc.integer({ min: 1, max: 4 }),
  packageOunces: fc.integer({ min: 1, max: 16 }),
});

function jobOf(made: typeof jobs extends fc.Arbitrary<infer T> ? T : never): Job {
  const yarn = { count: made.count, system: "cotton", plies: made.plies, counted: "single" } as const;
  const packed = { ...yarn, onHand: ounces(0), package: ounces(made.packageOunces) };
  const base = napkins();
  return {
    ...base,
    newWarp: {
      ...base.newWarp,
      takeUp: percentLost(made.takeUp),
      wasteInFront: inches(made.front),
      wasteBehind: inches(made.behind),
    },
    pieces: {
      ...base.pieces,
      number: made.pieces,
      finishedLength: inches(made.eighths / 8),
      hemEachEnd: inches(made.hemEighths / 8),
      loomToFinished: percentLost(made.loomToFinished),
    },
    yarns: { natural: packed, madder: packed },
    stripes: [
      {
        repeat: made.repeat,
        of: [
          { colour: "natural", ends: made.natural },
          { colour: "madder", ends: made.madder },
        ],
      },
    ],
    winding: { ...base.winding, mostEndsInChain: 200 },
  };
}

/** Another in every run, printed in the name of the test; THRUM_SEED repeats one. */
const seed = Number(process.env["THRUM_SEED"] ?? Date.now() % 2 ** 31);

describe("a plan", () => {
  it(`of any job agrees with the same sums in whole-number fractions (seed ${String(seed)})`, () => {
    fc.assert(
      fc.property(jobs, (made) => {
        const plan = planWarp(jobOf(made));
        const cut = plus(ratio(made.eighths, 8), by(ratio(2), ratio(made.hemEighths, 8)));
        const woven = over(over(by(ratio(made.pieces), cut), left(made.loomToFinished)), left(made.takeUp));
        const warp = plus(woven, ratio(made.front));
        expect(plan.warpLength.in(inches)).toBeCloseTo(asNumber(warp), 9);
        const ends = { natural: made.natural * made.repeat, madder: made.madder * made.repeat };
        expect(plan.ends).toBe(ends.natural + ends.madder);
        for (const [name, own] of Object.entries(ends)) {
          const yarn = plan.yarns.find((one) => one.name === name);
          const length = by(ratio(own), over(warp, ratio(36)));
          const mass = over(by(length, ratio(16 * made.plies)), ratio(840 * made.count));
          expect(yarn?.ends).toBe(own);
          expect(yarn?.length.in(yards)).toBeCloseTo(asNumber(length), 8);
          expect(yarn?.mass.in(ounces)).toBeCloseTo(asNumber(mass), 9);
          expect(yarn?.packages).toBe(ceiling(over(mass, ratio(made.packageOunces))));
        }
        expect(plan.joining.map(({ ends: own }) => own).reduce((a, b) => a + b)).toBe(plan.ends);
        expect(plan.winding.flatMap(({ stripes }) => stripes).reduce((sum, one) => sum + one.ends, 0)).toBe(plan.ends);
        expect(plan.shafts.reduce((sum, one) => sum + one.ends, 0)).toBe(plan.ends);
      }),
      { numRuns: 200, seed },
    );
  });

  it("keeps every line within eighty columns and never shows NaN, undefined or an endless number", () => {
    fc.assert(
      fc.property(jobs, (made) => {
        const text = planText(planWarp(jobOf(made)));
        for (const line of text.split("\n")) expect(line.length, line).toBeLessThanOrEqual(80);
        expect(text).not.toMatch(/NaN|undefined|Infinity|\[object|\d{14}/u);
      }),
      { numRuns: 50 },
    );
  });

  it("places every stripe edge on its dent, its place in the repeat and its shaft", () => {
    const { joining } = planWarp({ ...napkins(), oldWarp: { ...napkins().oldWarp, threading: [1, 3, 2, 4, 5, 6] } });
    const edge = joining[1];
    // End 64: dent 32 at two to the dent; 64 = 10 × 6 + 4, the fourth place, which is on shaft 4.
    expect(edge).toMatchObject({
      lastEnd: 64,
      dent: 32,
      placeInRepeat: 4,
      shaft: 4,
      splitsDent: false,
      splitsRepeat: true,
    });
  });

  it("spares the waste at the back when tied in front, and at the front when tied behind the heddles", () => {
    const job = napkins();
    const front = planWarp(job);
    const behind = planWarp({
      ...job,
      loom: { ...job.loom, knotsTied: "behind the heddles", weaverFaces: "front of the loom" },
    });
    expect(front.position).toMatchObject({ sparedAt: "back", knotsPass: ["reed", "heddles"] });
    expect(behind.position).toMatchObject({ sparedAt: "front", knotsPass: ["heddles", "reed"] });
    expect(behind.warpLength.in(inches) - front.warpLength.in(inches)).toBeCloseTo(18 - 10, 10);
    expect([front.endOneAt, behind.endOneAt]).toEqual(["left", "right"]);
    expect(behind.laid.map(({ number }) => number)).toEqual([3, 2, 1]);
  });

  it("that does not fit is printed all the same, the failing step first and no number hidden", () => {
    const job = napkins();
    const plan = planWarp({ ...job, oldWarp: { ...job.oldWarp, ends: 372 } });
    const text = planText(plan);
    expect(plan.fit.verdict).toBe("does not fit");
    expect(text.indexOf("DOES NOT FIT")).toBeLessThan(text.indexOf("BEFORE YOU CUT"));
    expect(text).toContain("The new warp is 4 ends short");
    expect(text).toContain("Wind 200 1/4 in for 9 pieces");
  });

  it("in metric measures is told in centimetres and metres", () => {
    const job = napkins();
    const metric = { ...job, pieces: { ...job.pieces, finishedLength: metres("0.4") } };
    expect(planText(planWarp(metric))).toMatch(/Wind [\d.]+ m for 9 pieces/u);
    expect(planWarp(metric).yarns[0]?.length.unit).toBe("metres");
  });

  it("shows text from the job as one plain line", () => {
    const job = napkins();
    const text = planText(planWarp({ ...job, title: "Hall\u001b[2J\nnapkins\u202e", note: "x".repeat(400) }));
    expect(text.startsWith("Hall [2J napkins")).toBe(true);
    expect(text).not.toMatch(/[\p{Cc}\p{Cf}](?<!\n)/u);
  });

  it("opens every number into a working that ends in it", () => {
    const plan = planWarp(napkins());
    const warp = plan.steps.at(-1)?.explain();
    expect(warp?.result.value).toBe("200.217 in");
    expect(plan.yarns.flatMap(({ steps }) => steps.map((one) => one.explain().name))).toHaveLength(9);
  });

  it("buys nothing where there is enough on hand", () => {
    const job = napkins();
    const yarn = {
      count: 8,
      system: "cotton",
      plies: 2,
      counted: "single",
      onHand: grams(900),
      package: grams(200),
    } as const;
    const natural = planWarp({ ...job, yarns: { ...job.yarns, natural: yarn } }).yarns[0];
    expect(natural?.packages).toBe(0);
    expect(natural?.missing.in(grams)).toBe(0);
  });
});
