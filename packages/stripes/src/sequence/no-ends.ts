import { madeSequence } from "./made-sequence.js";
import type { Sequence } from "./sequence.js";

/** The sequence without ends: what is left of a warp when all of it is cut away. */
export const noEnds: Sequence<never> = /* @__PURE__ */ madeSequence("noEnds", []);
