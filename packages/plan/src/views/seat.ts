import * as join from "../figures/join.js";
import { job } from "../figures/keys.js";
import * as winding from "../figures/winding.js";
import { says } from "./view.js";
import type { Template } from "./view.js";
import { byWord, optional } from "./ways.js";

const AT_YOUR_LEFT = says`End 1 is at your left as you sit.`;
const AT_YOUR_RIGHT = says`End 1 is at your right as you sit.`;

/** On which side end 1 is as the weaver sits; until the job says, it is "end 1's side". */
export const whereEndOneIs: Template = optional(
  byWord(winding.faces, {
    "back of the loom": byWord(job.loom.endOneOn, { left: AT_YOUR_LEFT, right: AT_YOUR_RIGHT }),
    "front of the loom": byWord(job.loom.endOneOn, { left: AT_YOUR_RIGHT, right: AT_YOUR_LEFT }),
  }),
);

/** Where the knots are tied, and how the weaver sits. */
export const whereTheKnotsAre: Template = says`The knots are tied ${job.join.knots}; sit facing the ${winding.faces}.`;

/** What differs with a warp tied to an old one and one threaded afresh; a page is of the job only by what it says of it. */
export function tiedOrAfresh(tied: Template, afresh: Template): Template {
  return {
    reads: [join.standing, ...tied.reads, ...afresh.reads],
    build: (at) => {
      const seen = at.see(join.standing);
      return (seen.is === "there" && seen.value === "afresh" ? afresh : tied).build(at);
    },
  };
}
