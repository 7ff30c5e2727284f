import {
  convertCount,
  cottonCount,
  endsAtSides,
  inches,
  knotsThroughReed,
  leaseLifts,
  peirceDiametersPerInch,
  publishedAllowance,
  spaceInDent,
} from "@thrum/maths";
import type { DentsPerLength, EndsAtSides, KnotsThroughReed, LeaseLifts, Length, Share } from "@thrum/maths";
import type { Job } from "../job/job.js";
import type { NewYarn } from "./fit.js";
import { step } from "./step.js";
import type { PlanStep } from "./step.js";

/** Whether the knots of one new yarn pass the reed. */
export interface YarnKnots extends KnotsThroughReed {
  readonly yarn: string;
}

/** What joining asks of the loom: a lease, knots that pass, ends added or dropped. */
export interface Joinable {
  readonly lease: LeaseLifts;
  readonly sides: EndsAtSides;
  readonly knots: readonly YarnKnots[];
  /** Of the pitch of a dent, taken for the gap where it was not measured; null where it was. */
  readonly openTaken: Share | null;
  readonly steps: readonly PlanStep[];
}

/** Thread across by the rule for cotton; other fibres are near enough for the band of the answer. */
function diameterOf(count: NewYarn["count"]): Length {
  const cotton = convertCount(count, cottonCount).count.in(cottonCount);
  return inches(1 / peirceDiametersPerInch({ cottonCount: cotton }));
}

/** What joining the two warps asks of the loom. */
export function joinable(
  { oldWarp, loom }: Job,
  reed: DentsPerLength,
  ends: number,
  oldCount: NewYarn["count"],
  yarns: readonly NewYarn[],
): Joinable {
  const { gapInDent, threading, endsPerDent, emptyDents, spareHeddles } = oldWarp;
  const gapMeasured = gapInDent !== "not measured";
  // The only figure published: used where the gap was not measured, and said so.
  const spaceInput = { reed, open: publishedAllowance("free share of a dent, power-loom reed").from };
  const space = gapMeasured ? gapInDent : spaceInDent(spaceInput);
  const shafts = Math.max(...threading);
  const whole = Math.floor(ends / threading.length);
  const rest = threading.slice(0, ends % threading.length);
  const parts = [{ threading, times: whole }, ...(rest.length > 0 ? [{ threading: rest, times: 1 }] : [])];
  const oldDiameter = diameterOf(oldCount);
  const clearances = yarns.map(({ name, count }) => {
    const diameters = { oldDiameter, newDiameter: diameterOf(count) };
    return [name, knotsThroughReed({ space, ...diameters, endsInDent: endsPerDent, knot: loom.knot })] as const;
  });
  return {
    lease: leaseLifts({ shafts, parts }),
    sides: endsAtSides({ oldEnds: oldWarp.ends, newEnds: ends, threading, endsPerDent, emptyDents, spareHeddles }),
    knots: clearances.map(([yarn, knots]) => ({ yarn, ...knots })),
    openTaken: gapMeasured ? null : spaceInput.open,
    steps: [
      ...(gapMeasured ? [] : [step(spaceInDent, spaceInput)]),
      ...clearances.flatMap(([, { steps }]) => steps.map(({ calculation, input }) => step(calculation, input))),
    ],
  };
}
