import { waits } from "../core/waits.js";
import type { JobSides } from "../job/job.js";
import type { Runs } from "../job/runs.js";
import type { Stripe } from "../job/stripes.js";
import { laid } from "./laid.js";
import type { Laid } from "./laid.js";
import { STRIPES } from "./laid-stripes.js";
import type { LaidStripe } from "./laid-stripes.js";

/** The stripes in the places that take a new end, with what is added or dropped in numbers. */
export function roomOnLoom(given: {
  readonly stripes: Runs<Stripe>;
  readonly places: number;
  readonly sides: JobSides | null;
}): Laid<LaidStripe> {
  const { stripes, places, sides } = given;
  if (sides !== null && sides.numbers === undefined) return waits("cloth", "finishedWidth");
  const { before, after } = sides?.numbers ?? { before: 0, after: 0 };
  return laid(stripes, STRIPES, places + before + after);
}

/** The fewest ends that close and reach the number wanted. */
export function stripesReaching(given: { readonly stripes: Runs<Stripe>; readonly ends: number }): Laid<LaidStripe> {
  const laidOut = laid(given.stripes, STRIPES, given.ends);
  const [, above] = laidOut.open?.closes ?? [0, given.ends];
  return laid(given.stripes, STRIPES, above);
}
