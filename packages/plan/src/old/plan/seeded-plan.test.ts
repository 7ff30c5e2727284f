import { inches, ounces, percentLost, yards } from "@thrum/maths";
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
  onHandOunces: fc.integer({ min: 0, max: 12 }),
  packageOunces: fc.integer({ min: 1, max: 16 }),
});
type Made = typeof jobs extends fc.Arbitrary<infer T> ? T : never;

function jobOf(made: Made): Job {
  const yarn = { count: made.count, system: "cotton", plies: made.plies, counted: "single" } as const;
  const packed = { ...yarn, onHand: ounces(made.onHandOunces), package: ounces(made.packageOunces) };
  const base = napkins();
  const lengths = { finishedLength: inches(made.eighths / 8), hemEachEnd: inches(made.hemEighths / 8) };
  const stripes = [
    { colour: "natural", ends: made.natural },
    { colour: "madder", ends: made.madder },
  ];
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
      ...lengths,
      number: made.pieces,
      loomToFinished: percentLost(made.loomToFinished),
    },
    yarns: { natural: packed, madder: packed },
    stripes: [{ repeat: made.repeat, of: stripes }],
    winding: { ...base.winding, mostEndsInChain: 200 },
  };
}

/** Another in every run, printed in the name of the test; THRUM_SEED repeats one. */
const seed = Number(process.env["THRUM_SEED"] ?? Date.now() % 2 ** 31);

describe(`a plan of any job (seed ${String(seed)})`, () => {
  it("agrees with the same sums in whole-number fractions", () => {
    fc.assert(
      fc.property(jobs, (made) => {
        const plan = planWarp(jobOf(made));
        const cut = plus(ratio(made.eighths, 8), by(ratio(2), ratio(made.hemEighths, 8)));
        const woven = over(over(by(ratio(made.pieces), cut), left(made.loomToFinished)), left(made.takeUp));
        const warp = plus(woven, ratio(made.front));
        expect(plan.warpLength.in(inches)).toBeCloseTo(asNumber(warp), 9);
        const ends = { natural: made.natural * made.repeat, madder: made.madder * made.repeat };
        expect(plan.ends).toBe(ends.natural + ends.madder);
        expect(plan.position.sparedYarn.in(inches)).toBeCloseTo(plan.ends * made.behind, 9);
        for (const [name, own] of Object.entries(ends)) {
          const yarn = plan.yarns.find((one) => one.name === name);
          // Natural is woven with too: 18 picks to the inch, as wide as its ends at 20 to the inch.
          const cloth = by(ratio(made.pieces), over(cut, left(made.loomToFinished)));
          const weft = by(by(cloth, ratio(18)), ratio(plan.ends, 20));
          const inAll = plus(by(ratio(own), warp), name === "natural" ? weft : ratio(0));
          const length = over(inAll, ratio(36));
          const mass = over(by(length, ratio(16 * made.plies)), ratio(840 * made.count));
          const short = plus(mass, ratio(-made.onHandOunces));
          const packages = short[0] > 0n ? ceiling(over(short, ratio(made.packageOunces))) : 0;
          expect(yarn?.ends).toBe(own);
          expect(yarn?.length.in(yards)).toBeCloseTo(asNumber(length), 8);
          expect(yarn?.mass.in(ounces)).toBeCloseTo(asNumber(mass), 9);
          expect(yarn?.packages).toBe(packages);
          const bought = ratio(packages * made.packageOunces);
          expect(yarn?.spare.in(ounces)).toBeCloseTo(asNumber(plus(bought, by(short, ratio(-1)))), 9);
        }
        expect(plan.joining.map(({ ends: own }) => own).reduce((a, b) => a + b)).toBe(plan.ends);
        expect(plan.winding.flatMap(({ stripes }) => stripes).reduce((sum, one) => sum + one.ends, 0)).toBe(plan.ends);
        expect(plan.groups.reduce((sum, one) => sum + one.ends, 0)).toBe(plan.ends);
        for (const [name, own] of Object.entries(ends)) {
          const raised = plan.shedProof.flatMap(({ colours }) => colours).filter(({ colour }) => colour === name);
          expect(raised.reduce((sum, one) => sum + one.ends, 0)).toBe(own);
        }
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
      { numRuns: 50, seed },
    );
  });
});
