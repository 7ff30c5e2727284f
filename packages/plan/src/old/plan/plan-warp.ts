import { difference, finishedWidth, reedWidth, settInReed, warpLength, warpLengthByBothRules } from "@thrum/maths";
import type { Length } from "@thrum/maths";
import { chains, edges, endsPerColour, layingList } from "@thrum/stripes";
import { frozen } from "../job/frozen.js";
import { givenJob } from "../job/given-job.js";
import type { Job, JobWarpYarn } from "../job/job.js";
import { sequenceOf } from "../job/stripes.js";
import { madePlan } from "./brand.js";
import { extraEnds, extraOf } from "./extra-ends.js";
import { fibreContents } from "./content.js";
import { costPlan } from "./costs.js";
import { firstInches } from "./first-inches.js";
import { warpFit } from "./fit.js";
import { foundPlan } from "./found.js";
import { neighboursOf } from "./neighbours.js";
import { oldGroups, tyingGroups } from "./groups.js";
import { joiningRows } from "./joining.js";
import { joinable } from "./knots.js";
import { pieceTape } from "./piece-tape.js";
import { knotPosition } from "./position.js";
import { oldSley, picksOf, settOf } from "./closeness.js";
import { shedProof } from "./shed-proof.js";
import { step } from "./step.js";
import type { WarpPlan } from "./warp-plan.js";
import { woundChain } from "./winding.js";
import { threadCountOf } from "./thread-count.js";
import { yarnPlan } from "./yarns.js";

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
  const endsOf = endsPerColour(warp);
  const names = [...new Set([...endsOf.keys(), given.weft.yarn])];
  const used = names.map((name) => {
    const yarn = yarnOf(given.yarns, name);
    return { name, yarn, count: threadCountOf(yarn), ends: endsOf.get(name) ?? 0 };
  });
  const counts = used.filter(({ ends }) => ends > 0);
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
  const tape = pieceTape(given, length, position.waste);
  const picks = picksOf(given.firstInches ?? given.weft);
  const weft = { wovenLength: tape.woven, picks, widthInReed };
  const join = joinable(given, sleyInput.reed, warp.ends, old.count, counts);
  const cut = chains({ sequence: warp, most: winding.mostEndsInChain, cutAt: winding.chainsEndAt });
  const { endOneOn, knotsTied: tiedAt, weaverFaces } = loom;
  const laid = layingList({ chains: cut, endOneOn, tiedAt, weaverFaces });
  const warpInCloth = difference(length, position.waste);
  const extra = extraEnds(given, length);
  const yarns = used.map(({ name, yarn, count, ends }) =>
    yarnPlan(name, yarn, {
      ...{ ends, extraEnds: extraOf(name, extra), count, warpLength: length, warpInCloth },
      weft: name === given.weft.yarn ? weft : null,
    }),
  );
  return frozen(
    madePlan({
      title: given.title,
      note: given.note,
      oldGroups: oldGroups(oldWarp),
      position,
      fit: warpFit(old, { ...planned, edges: edges(warp) }, counts, join.sides, neighboursOf(warp, given.coloursSeen)),
      joinable: join,
      sett,
      widthInReed,
      finishedWidth: finishedWidth(finishedInput),
      pieces: pieces.number,
      warpLength: length,
      ends: warp.ends,
      yarns,
      extraEnds: extra,
      winding: cut.map((chain) => woundChain(chain, winding)),
      threadsTogether: winding.threadsTogether,
      laid,
      weaverFaces,
      knot: loom.knot,
      endOneAt: laid[0]?.firstEndOn ?? endOneOn,
      joining: joiningRows(warp, oldWarp),
      groups: tyingGroups(warp, oldWarp),
      shedProof: shedProof(warp, oldWarp.threading),
      picks,
      weftYarn: given.weft.yarn,
      pieceTape: tape,
      warpLengthByAdding: warpLengthByBothRules(warpInput).adding,
      firstInches: firstInches(given, widthInReed),
      found: foundPlan(given),
      costs: costPlan(given, yarns),
      fibres: fibreContents(given, yarns),
      steps: [
        step(settInReed, sleyInput),
        step(reedWidth, widthInput),
        step(finishedWidth, finishedInput),
        step(warpLength, warpInput),
        ...tape.steps,
        ...join.steps,
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
