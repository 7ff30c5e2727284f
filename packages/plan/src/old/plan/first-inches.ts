import { difference, lossFromMeasures } from "@thrum/maths";
import type { Length, Loss, PicksPerLength } from "@thrum/maths";
import type { Job } from "../job/job.js";
import { picksOf } from "./closeness.js";
import { step } from "./step.js";
import type { PlanStep } from "./step.js";

/** What the first inches showed: from here on the plan reckons with what was found. */
export interface FirstInches {
  readonly picksPlanned: PicksPerLength;
  readonly picksFound: PicksPerLength;
  readonly widthAtFell: Length;
  /** Of the width in the reed; null where the cloth is no narrower. */
  readonly drawIn: Loss | null;
  readonly steps: readonly PlanStep[];
}

/** Null where nothing has been measured yet. */
export function firstInches({ firstInches: measured, weft }: Job, widthInReed: Length): FirstInches | null {
  if (measured === undefined) return null;
  const { widthAtFell } = measured;
  const input = { before: widthInReed, after: widthAtFell };
  const isNarrower = !difference(widthInReed, widthAtFell).value.startsWith("-");
  return {
    picksPlanned: picksOf(weft),
    picksFound: picksOf(measured),
    widthAtFell,
    drawIn: isNarrower ? lossFromMeasures(input) : null,
    steps: isNarrower ? [step(lossFromMeasures, input)] : [],
  };
}
