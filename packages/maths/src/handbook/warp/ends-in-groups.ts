import { calculation, partsToo, whole } from "../../engine/formula/index.js";
import type { Calculation } from "../../engine/formula/index.js";
import { sizesBeer } from "../../sources/index.js";

export interface EndsInGroupsInput {
  /** Beers, porters, portées, bouts of a mill or passes of a creel; halves counted as parts. */
  readonly groups: number;
  /** By the custom of the place, or threads in the creel. */
  readonly endsPerGroup: number;
}

/**
 * Ends of a warp told in groups: beers, porters, portées, or the passes of a creel.
 *
 * What one holds differs from place to place: `warpGroup` has what sources say of it.
 *
 * @formula ends = groups × endsPerGroup
 * @units groups; ends to a group → ends
 * @exactness exact
 * @throws QuantityError "missing", "unknown-field", "wrong-kind", "out-of-range", "not-whole", one error for all faulty fields
 * @source sizes-beer
 * @example endsInGroups({ groups: 12.5, endsPerGroup: 40 }) // 500
 */
export const endsInGroups: Calculation<EndsInGroupsInput, number> = /* @__PURE__ */ calculation(() => ({
  name: "endsInGroups",
  inputs: {
    groups: partsToo(
      "groups",
      "beers, porters, portées, bouts of a mill or passes of a creel; halves counted as parts",
    ),
    endsPerGroup: whole("ends to a group", "by the custom of the place, or threads in the creel", { atLeast: 1 }),
  },
  formula: "ends = groups × endsPerGroup",
  result: whole("ends", "in all the groups", { atLeast: 1 }),
  source: sizesBeer,
}));
