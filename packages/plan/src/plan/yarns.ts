import {
  cottonCount,
  denier,
  difference,
  inUnit,
  linenCount,
  metres,
  metricCount,
  packagesToBuy,
  tex,
  times,
  compare,
  worstedCount,
  yards,
  yarnCount,
  yarnForEnds,
  yarnMass,
  yarnMassDirect,
} from "@thrum/maths";
import type { DirectCount, IndirectCount, Length, Mass, Yarn } from "@thrum/maths";
import type { JobWarpYarn, JobYarn } from "../job/job.js";
import { step } from "./step.js";
import type { PlanStep } from "./step.js";

/** What one yarn of the warp comes to. */
export interface YarnPlan {
  readonly name: string;
  readonly ends: number;
  readonly length: Length;
  readonly mass: Mass;
  readonly onHand: Mass;
  /** What is missing; nothing where there is enough. */
  readonly missing: Mass;
  readonly packageMass: Mass;
  readonly packages: number;
  /** What is left over once the packages are bought. */
  readonly spare: Mass;
  readonly steps: readonly PlanStep[];
}

const SYSTEMS = {
  tex,
  denier,
  cotton: cottonCount,
  worsted: worstedCount,
  linen: linenCount,
  metric: metricCount,
} as const;

/** The count of the finished thread of a yarn in the job. */
export function threadCountOf({ count, system, plies, counted }: JobYarn): DirectCount | IndirectCount {
  const yarn: Yarn = { count: SYSTEMS[system](count), plies, counted };
  return yarnCount(yarn);
}

function massStep(
  length: Length,
  count: DirectCount | IndirectCount,
): { readonly mass: Mass; readonly step: PlanStep } {
  if (count.dimension === "mass per length") {
    const input = { length, count };
    return { mass: yarnMassDirect(input), step: step(yarnMassDirect, input) };
  }
  const input = { length, count };
  return { mass: yarnMass(input), step: step(yarnMass, input) };
}

/** Yarn is measured off in yards or metres, whatever the napkins are measured in. */
function yarnMeasure(length: Length): Length {
  const isMetric = length.unit.endsWith("metres");
  return inUnit(length, isMetric ? metres : yards);
}

/** The yarn a warp takes, and what has to be bought of it. */
export function yarnPlan(name: string, ends: number, yarn: JobWarpYarn, warp: Length): YarnPlan {
  const lengthInput = { ends, warpLength: yarnMeasure(warp) };
  const length = yarnForEnds(lengthInput);
  const { mass, step: massOf } = massStep(length, threadCountOf(yarn));
  const short = difference(mass, yarn.onHand);
  const nothing = times(mass, 0);
  const missing = compare(short, nothing) > 0 ? short : nothing;
  const buyInput = { needed: missing, packageMass: yarn.package };
  const packages = packagesToBuy(buyInput);
  const spare = difference(times(yarn.package, packages), short);
  return {
    ...{ name, ends, length, mass, onHand: yarn.onHand, missing, packageMass: yarn.package, packages, spare },
    steps: [step(yarnForEnds, lengthInput), massOf, step(packagesToBuy, buyInput)],
  };
}
