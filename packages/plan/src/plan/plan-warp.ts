import { dentsPerInch, dentsPerTenCentimetres, endsPerCentimetre, endsPerInch } from "@thrum/maths";
import { finishedWidth, reedWidth, settInReed, warpLength } from "@thrum/maths";
import type { EndsPerLength, Length } from "@thrum/maths";
import { chains, edges, endsPerColour, layingList } from "@thrum/stripes";
import type { LaidChain } from "@thrum/stripes";
import { frozen } from "../job/frozen.js";
import { givenJob } from "../job/given-job.js";
import type { Job, JobWarpYarn } from "../job/job.js";
import { sequenceOf } from "../job/stripes.js";
import { madePlan } from "./brand.js";
import { warpFit } from "./fit.js";
import type { WarpFit } from "./fit.js";
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
  readonly fit: WarpFit;
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
  readonly weaverFaces: Job["loom"]["weaverFaces"];
  /** The side on which the weaver, as she sits, finds end 1. */
  readonly endOneAt: "left" | "right";
  readonly joining: readonly JoiningRow[];
  readonly shafts: readonly ShaftLoad[];
  /** The sums behind width and length; the position and the yarns carry their own. */
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
 * @param job as `readJob` gives it, or made with the units of the maths
 * @returns the plan as data; `planText` writes it out
 * @throws QuantityError with every fault of a job that is none
 */
export function planWarp(job: Job): WarpPlan {
  const given = givenJob(job);
  const { oldWarp, newWarp, pieces, winding, loom } = given;
  const warp = sequenceOf(given.stripes);
  const colours = [...endsPerColour(warp)].map(([name, ends]) => ({ name, ends, yarn: yarnOf(given.yarns, name) }));
  const counts = colours.map(({ name, yarn }) => ({ name, count: threadCountOf(yarn) }));
  const sleyInput = oldSley(oldWarp);
  const sett = settInReed(sleyInput);
  const old = { ends: oldWarp.ends, sett, threading: oldWarp.threading, count: threadCountOf(oldWarp.yarn) };
  const planned = { ends: warp.ends, sett: settOf(newWarp), threading: newWarp.threading };
  const position = knotPosition(given, warp.ends);
  const widthInput = { ends: warp.ends, sett };
  const widthInReed = reedWidth(widthInput);
  const finishedInput = { widthInReed, reedToFinished: pieces.widthReedToFinished };
  const warpInput = lengthInput(given, position.waste);
  const length = warpLength(warpInput);
  const cut = chains({ sequence: warp, most: winding.mostEndsInChain, cutAt: winding.chainsEndAt });
  const { endOneOn, knotsTied: tiedAt, weaverFaces } = loom;
  const laid = layingList({ chains: cut, endOneOn, tiedAt, weaverFaces });
  return frozen(
    madePlan({
      title: given.title,
      note: given.note,
      position,
      fit: warpFit(old, { ...planned, edges: edges(warp) }, counts),
      sett,
      widthInReed,
      finishedWidth: finishedWidth(finishedInput),
      pieces: pieces.number,
      warpLength: length,
      ends: warp.ends,
      yarns: colours.map(({ name, ends, yarn }) => yarnPlan(name, ends, yarn, length)),
      winding: cut.map((chain) => woundChain(chain, winding)),
      threadsTogether: winding.threadsTogether,
      laid,
      weaverFaces,
      endOneAt: laid[0]?.firstEndOn ?? endOneOn,
      joining: joiningRows(warp, oldWarp),
      shafts: shaftLoads(warp.ends, oldWarp.threading),
      steps: [
        step(settInReed, sleyInput),
        step(reedWidth, widthInput),
        step(finishedWidth, finishedInput),
        step(warpLength, warpInput),
      ],
    }),
  );
}

/** A yarn the stripes name; the check of the job made sure that it is there. */
function yarnOf(yarns: Job["yarns"], name: string): JobWarpYarn {
  const yarn = yarns[name];
  if (yarn === undefined) throw new RangeError(`the job has no yarn ${name}`);
  return yarn;
}
