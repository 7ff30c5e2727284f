import {
  coarser,
  dentsPerInch,
  dentsPerTenCentimetres,
  endsPerCentimetre,
  endsPerInch,
  finishedWidth,
  reedWidth,
  settInReed,
  tieOn,
  warpLength,
} from "@thrum/maths";
import type { EndsPerLength, Length, TieOnReport } from "@thrum/maths";
import { chains, edges, endsPerColour, layingList } from "@thrum/stripes";
import type { LaidChain } from "@thrum/stripes";
import type { Job, JobWarpYarn } from "../job/job.js";
import { sequenceOf } from "../job/stripes.js";
import { joiningRows, shaftLoads } from "./joining.js";
import type { JoiningRow, ShaftLoad } from "./joining.js";
import { knotPosition } from "./position.js";
import type { KnotPosition } from "./position.js";
import { step } from "./step.js";
import type { PlanStep } from "./step.js";
import { woundChain } from "./winding.js";
import type { WoundChain } from "./winding.js";
import { threadCountOf, yarnPlan } from "./yarns.js";
import type { YarnPlan } from "./yarns.js";

/** One warp from the old thrums to the joining, in the order of the work at the loom. */
export interface WarpPlan {
  readonly title: string;
  readonly note: string;
  readonly position: KnotPosition;
  /** The old warp compared with the new one; grist by the heaviest of the new yarns. */
  readonly fit: TieOnReport;
  readonly heaviestYarn: string;
  readonly sett: EndsPerLength;
  readonly widthInReed: Length;
  readonly finishedWidth: Length;
  readonly pieces: number;
  readonly warpLength: Length;
  readonly ends: number;
  readonly yarns: readonly YarnPlan[];
  /** The chains in the order wound. */
  readonly winding: readonly WoundChain[];
  readonly threadsTogether: number;
  /** The chains as they lie before the weaver, from her left. */
  readonly laid: readonly LaidChain<string>[];
  /** The side on which the weaver, as she sits, finds end 1. */
  readonly endOneAt: "left" | "right";
  readonly joining: readonly JoiningRow[];
  readonly shafts: readonly ShaftLoad[];
  /** The sums behind width and length; the yarns carry their own. */
  readonly steps: readonly PlanStep[];
}

function settOf({ sett }: Job["newWarp"]): EndsPerLength {
  return sett.in === "1 inch" ? endsPerInch(sett.ends) : endsPerCentimetre(sett.ends);
}

/** The sley that is kept: the old reed at the old ends per dent. */
function oldSley({ reed, endsPerDent }: Job["oldWarp"]): Parameters<typeof settInReed>[0] {
  const dents = reed.in === "1 inch" ? dentsPerInch(reed.dents) : dentsPerTenCentimetres(reed.dents);
  return { reed: dents, endsPerDent };
}

function lengthInput({ pieces, newWarp }: Job, waste: Length): Parameters<typeof warpLength>[0] {
  const { number, finishedLength, hemEachEnd, loomToFinished } = pieces;
  return { pieces: number, finishedLength, hemEachEnd, loomToFinished, takeUp: newWarp.takeUp, loomWaste: waste };
}

/**
 * Plans one warp: does it fit the old one, how wide and long, how much of each yarn, how to wind and to join it.
 *
 * @param job as `readJob` gives it
 * @returns the plan as data; `planText` writes it out
 */
export function planWarp(job: Job): WarpPlan {
  const { oldWarp, newWarp, pieces, winding, loom } = job;
  const warp = sequenceOf(job.stripes);
  const colours = [...endsPerColour(warp)];
  const counts = colours.map(([name]) => ({ name, count: threadCountOf(yarnOf(job, name)) }));
  const heaviest = counts.reduce((a, b) => (coarser(b.count, a.count) ? b : a));
  const sleyInput = oldSley(oldWarp);
  const oldSett = settInReed(sleyInput);
  const old = {
    ends: oldWarp.ends,
    sett: oldSett,
    threadingRepeat: oldWarp.threading.length,
    count: threadCountOf(oldWarp.yarn),
  };
  const planned = { sett: settOf(newWarp), threadingRepeat: newWarp.threadingRepeat, count: heaviest.count };
  const position = knotPosition(job);
  const widthInput = { ends: warp.ends, sett: oldSett };
  const widthInReed = reedWidth(widthInput);
  const finishedInput = { widthInReed, reedToFinished: pieces.widthReedToFinished };
  const warpInput = lengthInput(job, position.waste);
  const length = warpLength(warpInput);
  const cut = chains({ sequence: warp, most: winding.mostEndsInChain, cutAt: winding.chainsEndAt });
  const laid = layingList({
    chains: cut,
    endOneOn: loom.endOneOn,
    tiedAt: loom.knotsTied,
    weaverFaces: loom.weaverFaces,
  });
  return Object.freeze({
    title: job.title,
    note: job.note,
    position,
    fit: tieOn(old, { ...planned, ends: warp.ends, edges: edges(warp) }),
    heaviestYarn: heaviest.name,
    sett: oldSett,
    widthInReed,
    finishedWidth: finishedWidth(finishedInput),
    pieces: pieces.number,
    warpLength: length,
    ends: warp.ends,
    yarns: colours.map(([name, ends]) => yarnPlan(name, ends, yarnOf(job, name), length)),
    winding: cut.map((chain) => woundChain(chain, winding)),
    threadsTogether: winding.threadsTogether,
    laid,
    endOneAt: laid[0]?.firstEndOn ?? loom.endOneOn,
    joining: joiningRows(warp, oldWarp),
    shafts: shaftLoads(warp.ends, oldWarp.threading),
    steps: [
      step(settInReed, sleyInput),
      step(reedWidth, widthInput),
      step(finishedWidth, finishedInput),
      step(warpLength, warpInput),
    ],
  });
}

/** A yarn the stripes name; reading the job made sure that it is there. */
function yarnOf({ yarns }: Job, name: string): JobWarpYarn {
  const yarn = yarns[name];
  if (yarn === undefined) throw new RangeError(`the job has no yarn ${name}`);
  return yarn;
}
