import {
  difference,
  inUnit,
  longestWarp,
  metres,
  packagesToBuy,
  sum,
  times,
  compare,
  weftLength,
  yards,
  yarnForEnds,
  yarnLength,
  yarnLengthDirect,
  yarnMass,
  yarnMassDirect,
} from "@thrum/maths";
import type { DirectCount, IndirectCount, Length, Mass, PicksPerLength, Unit } from "@thrum/maths";
import type { JobWarpYarn } from "../job/job.js";
import { step } from "./step.js";
import type { PlanStep } from "./step.js";

/** What one yarn of the warp comes to. */
export interface YarnPlan {
  readonly name: string;
  /** Of the warp itself. */
  readonly ends: number;
  /** Wound beside the warp for a sample or for repairs. */
  readonly extraEnds: number;
  /** For all these ends; nothing where there are none. */
  readonly warp: Length;
  /** Of the weft, laid straight; nothing where it is not woven with. */
  readonly weft: Length;
  /** Warp and weft together. */
  readonly length: Length;
  readonly mass: Mass;
  /** What of it is left in the pieces, the waste of the warp set aside. */
  readonly massInPieces: Mass;
  readonly onHand: Mass;
  /** What is missing; nothing where there is enough. */
  readonly missing: Mass;
  readonly packageMass: Mass;
  readonly packages: number;
  /** What is left over once the packages are bought. */
  readonly spare: Mass;
  /** The longest warp of these stripes that the yarn on hand allows, its weft set aside; null without any for the warp. */
  readonly longestWarp: Length | null;
  readonly steps: readonly PlanStep[];
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
function yarnUnit({ unit }: Length): Unit<"length"> {
  return unit.endsWith("metres") ? metres : yards;
}

function yarnMeasure(length: Length): Length {
  return inUnit(length, yarnUnit(length));
}

interface PlanStepOf<Q> {
  readonly value: Q;
  readonly step: PlanStep;
}

/** What a yarn has to do in the cloth. */
export interface YarnUse {
  /** Of the finished thread. */
  readonly count: DirectCount | IndirectCount;
  readonly ends: number;
  readonly extraEnds: number;
  readonly warpLength: Length;
  /** Of the warp, without what cannot be woven. */
  readonly warpInCloth: Length;
  readonly weft: WeftUse | null;
}

/** The weft of the whole run. */
export interface WeftUse {
  readonly wovenLength: Length;
  readonly picks: PicksPerLength;
  readonly widthInReed: Length;
}

/** The longest warp from what is on hand once the weft is set aside. */
function longestFrom(yarn: JobWarpYarn, use: YarnUse, weft: Length): PlanStepOf<Length> | null {
  const { count } = use;
  const ends = use.ends + use.extraEnds;
  const nothing = times(yarn.onHand, 0);
  if (ends === 0 || compare(yarn.onHand, nothing) === 0) return null;
  const onHand =
    count.dimension === "mass per length"
      ? yarnLengthDirect({ mass: yarn.onHand, count })
      : yarnLength({ mass: yarn.onHand, count });
  const left = difference(inUnit(onHand, yarnUnit(weft)), weft);
  if (compare(left, times(left, 0)) <= 0) return null;
  const input = { yarn: left, ends };
  return { value: longestWarp(input), step: step(longestWarp, input) };
}

/** The yarn a warp and its weft take, and what has to be bought of it. */
export function yarnPlan(name: string, yarn: JobWarpYarn, use: YarnUse): YarnPlan {
  const { ends, extraEnds, count, warpLength, warpInCloth, weft: woven } = use;
  const wound = ends + extraEnds;
  const lengthInput = { ends: wound, warpLength: yarnMeasure(warpLength) };
  const nothingWound = times(lengthInput.warpLength, 0);
  const warp = wound === 0 ? nothingWound : yarnForEnds(lengthInput);
  const weft = woven === null ? nothingWound : inUnit(weftLength(woven), yarnUnit(warp));
  const length = sum(warp, weft);
  const { mass, step: massOf } = massStep(length, count);
  const kept = ends === 0 ? nothingWound : yarnForEnds({ ends, warpLength: yarnMeasure(warpInCloth) });
  const short = difference(mass, yarn.onHand);
  const nothing = times(mass, 0);
  const missing = compare(short, nothing) > 0 ? short : nothing;
  const buyInput = { needed: missing, packageMass: yarn.package };
  const packages = packagesToBuy(buyInput);
  const spare = difference(times(yarn.package, packages), short);
  const longest = longestFrom(yarn, use, weft);
  return {
    ...{ name, ends, extraEnds, warp, weft, length, mass },
    massInPieces: massStep(sum(kept, weft), count).mass,
    ...{ onHand: yarn.onHand, missing, packageMass: yarn.package, packages, spare },
    longestWarp: longest?.value ?? null,
    steps: [
      ...(wound === 0 ? [] : [step(yarnForEnds, lengthInput)]),
      ...(woven === null ? [] : [step(weftLength, woven)]),
      massOf,
      step(packagesToBuy, buyInput),
      ...(longest === null ? [] : [longest.step]),
    ],
  };
}
