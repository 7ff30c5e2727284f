import { readInputs, whole } from "../../engine/formula/index.js";
import { frozen } from "../../engine/frozen.js";

export interface SplitOverBeamsInput {
  /** In the warp. */
  readonly ends: number;
  /** That one beam, or the creel, can take. */
  readonly mostPerBeam: number;
}

/** A warp shared out over as few beams as hold it. */
export interface SplitOverBeams {
  readonly beams: number;
  /** As even as whole ends allow; the beams with one end more come last. */
  readonly endsOnEach: readonly number[];
}

/**
 * A warp split over the fewest beams that hold it, the ends as even as can be.
 *
 * @param input the ends of the warp, and the most that one beam takes
 * @throws QuantityError for a field that is missing, unknown or of another kind, one error for all
 * @source warping-plan-2015
 * @example splitOverBeams({ ends: 4320, mostPerBeam: 640 }).endsOnEach // [617, 617, 617, 617, 617, 617, 618]
 */
export function splitOverBeams(input: SplitOverBeamsInput): SplitOverBeams {
  const declared = {
    ends: whole("ends", "in the warp", { atLeast: 1, atMost: 1_000_000 }),
    mostPerBeam: whole("ends", "that one beam can take", { atLeast: 1 }),
  };
  readInputs("splitOverBeams", declared, input);
  const { ends, mostPerBeam } = input;
  const beams = Math.ceil(ends / mostPerBeam);
  const [each, over] = [Math.floor(ends / beams), ends % beams];
  const endsOnEach = Array.from({ length: beams }, (_, beam) => each + Number(beam >= beams - over));
  return frozen({ beams, endsOnEach });
}
