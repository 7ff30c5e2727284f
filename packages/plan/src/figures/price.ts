import { costOverLength, priceFloor } from "@thrum/maths";
import type { Money } from "@thrum/maths";
import type { Figure } from "../core/source.js";
import { worked } from "../core/worked.js";
import * as order from "./cost.js";
import { job } from "./keys.js";
import * as piece from "./piece.js";

const { figure } = worked("piece");

/** Of one, by the length woven for it. */
export const cost: Figure<Money, "piece"> = figure("cost of one", costOverLength, {
  cost: order.whole,
  length: piece.woven,
  warpLength: order.bears,
});
/** Below it one is sold at a loss. */
export const floor: Figure<Money, "piece"> = figure("least price", priceFloor, {
  cost,
  commission: job.costs.commission,
});
