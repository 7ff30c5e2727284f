// The eight napkins of the running example, as warpLength takes them.
import { inches, percentLost } from "@thrum/maths";
import type { WarpLengthInput } from "@thrum/maths";

export const napkins: WarpLengthInput = {
  pieces: 8,
  finishedLength: inches(21),
  hemEachEnd: inches(1),
  loomToFinished: percentLost(10),
  takeUp: percentLost(8),
  loomWaste: inches(30),
};
