import { costsTogether, workCost, wovenInOrder } from "@thrum/maths";
import type { Length, Money } from "@thrum/maths";
import type { Figure } from "../core/source.js";
import { all, joined, these } from "../core/wiring.js";
import { worked } from "../core/worked.js";
import { job } from "./keys.js";
import * as piece from "./piece.js";
import * as yarn from "./yarn.js";

const { figure } = worked("plan");

/** Of all the work. */
export const work: Figure<Money> = figure("work", workCost, {
  hours: job.costs.hours,
  hourlyRate: job.costs.hourlyRate,
});
/** Yarn with its waste, work, and what else the run costs. */
export const whole: Figure<Money> = figure("cost of the run", costsTogether, {
  costs: joined(all(yarn.cost), these(work, job.costs.others)),
});
/** The pieces, which bear it, end to end. */
export const bears: Figure<Length> = figure("woven for sale", wovenInOrder, {
  number: all(piece.forSale),
  wovenLength: all(piece.woven),
});
