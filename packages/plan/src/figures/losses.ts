import { lossFromMeasures } from "@thrum/maths";
import type { Loss } from "@thrum/maths";
import { worked } from "../core/worked.js";
import type { Figure } from "../core/source.js";
import { job } from "./keys.js";

const { figure, first } = worked("plan");
const { takeUp: writtenTakeUp, lengthLoomToFinished, widthReedToFinished } = job.cloth;

/** Of the thread, from wound to weaving tension. */
export const takeUp: Figure<Loss> = first(
  "take-up",
  writtenTakeUp.lost,
  figure("take-up", lossFromMeasures, { before: writtenTakeUp.before, after: writtenTakeUp.after }),
);
/** Of the cloth's length, from weaving tension to finished. */
export const ofLength: Figure<Loss> = first(
  "loss of length",
  lengthLoomToFinished.lost,
  figure("loss of length", lossFromMeasures, {
    before: lengthLoomToFinished.before,
    after: lengthLoomToFinished.after,
  }),
);
/** Of the width, from the reed to finished. */
export const ofWidth: Figure<Loss> = first(
  "loss of width",
  widthReedToFinished.lost,
  figure("loss of width", lossFromMeasures, { before: widthReedToFinished.before, after: widthReedToFinished.after }),
);
