import { difference, fibreShareByConditionedMass, fibreShareByDryMass, sum, times, waterInYarn } from "@thrum/maths";
import type { Mass, Share } from "@thrum/maths";
import type { Job } from "../job/job.js";
import { step } from "./step.js";
import type { PlanStep } from "./step.js";
import type { YarnPlan } from "./yarns.js";

/** A fibre's share of the finished pieces, by both masses a label may be asked for. */
export interface FibreContent {
  readonly fibre: string;
  /** Of its yarns in the pieces, as their counts weigh them. */
  readonly mass: Mass;
  readonly byDryMass: Share;
  readonly byConditionedMass: Share;
  readonly steps: readonly PlanStep[];
}

/** What is left in the pieces of each fibre; the waste does not count. Null where the job does not name the fibres. */
export function fibreContents({ fibres }: Job, yarns: readonly YarnPlan[]): readonly FibreContent[] | null {
  if (fibres === undefined) return null;
  const all = Object.entries(fibres).map(([fibre, { regain, yarns: names }]) => {
    const masses = yarns.filter(({ name }) => names.includes(name)).map(({ massInPieces }) => massInPieces);
    const mass = masses.reduce((total, one) => sum(total, one));
    const water = { mass, regain };
    return { fibre, mass, regain, dry: difference(mass, waterInYarn(water)), step: step(waterInYarn, water) };
  });
  return all.map((own) => {
    const rest = all.filter((other) => other !== own);
    // A cloth of one fibre is that fibre and nothing of another.
    const others = rest.length === 0 ? [times(own.dry, 0)] : rest.map(({ dry }) => dry);
    const otherRegains = rest.length === 0 ? [own.regain] : rest.map(({ regain }) => regain);
    const dry = { fibre: own.dry, others };
    const conditioned = { ...dry, regain: own.regain, otherRegains };
    return {
      fibre: own.fibre,
      mass: own.mass,
      byDryMass: fibreShareByDryMass(dry),
      byConditionedMass: fibreShareByConditionedMass(conditioned),
      steps: [own.step, step(fibreShareByDryMass, dry), step(fibreShareByConditionedMass, conditioned)],
    };
  });
}
