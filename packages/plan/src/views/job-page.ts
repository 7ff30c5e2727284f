import { job } from "../figures/keys.js";
import { toldLines } from "./told-lines.js";
import { says } from "./view.js";
import type { View } from "./view.js";
import { optional, unsaid } from "./ways.js";

/** What the job is, what of it does not agree, and what waits. */
export const jobPage: View = {
  name: "job",
  heading: "The job",
  blocks: [toldLines, optional(says`${job.note}`), unsaid(job.thrum, says`Read by the first form of the job file.`)],
};
