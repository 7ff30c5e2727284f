import { pieceCost, priceFloor, workCost, yarnCost } from "@thrum/maths";
import type { Money } from "@thrum/maths";
import type { Job } from "../job/job.js";
import { step } from "./step.js";
import type { PlanStep } from "./step.js";
import type { YarnPlan } from "./yarns.js";

/** What the run costs, and the price below which a piece is sold at a loss. */
export interface CostPlan {
  /** Of all that is used, the waste in it, whether it was on hand or not. */
  readonly yarns: readonly { readonly name: string; readonly cost: Money }[];
  readonly work: Money;
  readonly others: Money;
  readonly piece: Money;
  readonly floor: Money;
  readonly steps: readonly PlanStep[];
}

/** The cost of one piece, all costs of the warp in it; null where the job does not tell them. */
export function costPlan({ costs, pieces }: Job, yarns: readonly YarnPlan[]): CostPlan | null {
  if (costs === undefined) return null;
  const { packagePrices, hours, hourlyRate, others, commission } = costs;
  const bought = yarns.flatMap(({ name, mass, packageMass }) => {
    const price = packagePrices[name];
    return price === undefined ? [] : [{ name, input: { yarn: mass, price, priceMass: packageMass } }];
  });
  const ofYarn = bought.map(({ name, input }) => ({ name, cost: yarnCost(input), step: step(yarnCost, input) }));
  const workInput = { hours, hourlyRate };
  const work = workCost(workInput);
  const more = others.value === "0" ? [] : [others];
  const pieceInput = { costs: [...ofYarn.map(({ cost }) => cost), work, ...more], pieces: pieces.number };
  const floorInput = { cost: pieceCost(pieceInput), commission };
  return {
    yarns: ofYarn.map(({ name, cost }) => ({ name, cost })),
    work,
    others,
    piece: floorInput.cost,
    floor: priceFloor(floorInput),
    steps: [
      ...ofYarn.map((one) => one.step),
      step(workCost, workInput),
      step(pieceCost, pieceInput),
      step(priceFloor, floorInput),
    ],
  };
}
