import * as join from "../figures/join.js";
import { job } from "../figures/keys.js";
import { packed } from "./laying-page.js";
import { either } from "./shown.js";
import { step } from "./view.js";
import type { View } from "./view.js";
import { all, byWord, unsaid } from "./ways.js";

const little = either("a few inches", "a few centimetres");
const newSticksOut = step`Take the lease sticks out, those of the new warp and any that still hang in the old one: no knot passes a stick.`;
const sticksOut = step`Take both pairs of lease sticks out, those of the old warp and those of the new: no knot passes a stick.`;
const trimmed = step`Trim the tails of the knots to about ${either("1/2 in", "1 cm")}, so that they do not catch.`;
const beamed = all(
  step`Untie the back rod from the back beam and free the warp beam.`,
  step`Wind on from the front: the row of knots goes with the back rod on to the warp beam.`,
  packed,
  step`Stop and look where a thread holds back; never pull it past a knot that sticks.`,
  step`Fasten the front end of the new warp to the front rod in small groups, all of one tension.`,
);
/** A warp threaded from the front is beamed only now; one spread by a raddle lies on its beam already. */
const afresh = all(
  unsaid(
    job.winding.raddle,
    step`Fasten the back ends to the back rod in small groups, all of one tension.`,
    step`Take the lease sticks out and wind on from the front, through reed and heddles, ${little} at a time.`,
    packed,
    step`Stop and look where a thread holds back.`,
  ),
  step`Fasten the front end of the warp to the front rod in small groups, all of one tension.`,
);

/** From the last knot to a warp under tension. */
export const throughPage: View = {
  name: "drawing-through",
  heading: "Drawing through and beaming",
  afresh: "Beaming and fastening",
  blocks: [
    byWord(join.knots, {
      "in front of the reed": all(
        newSticksOut,
        trimmed,
        step`Ease the knots back through the reed, then through the heddles, ${little} at a time.`,
        beamed,
      ),
      "behind the reed": all(
        sticksOut,
        trimmed,
        step`Ease the knots back through the heddles, ${little} at a time.`,
        beamed,
      ),
      "behind the heddles": all(
        sticksOut,
        trimmed,
        step`Pull the knots forward through the heddles, then through the reed, gently, from the front, letting the warp beam off as they come, until their row lies in front of the reed with room to weave behind it.`,
        step`Fasten the old ends to the front rod in small groups, all of one tension.`,
      ),
      nowhere: afresh,
    }),
  ],
};
