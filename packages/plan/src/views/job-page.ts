import { job } from "../figures/keys.js";
import { says } from "./view.js";
import type { View } from "./view.js";
import { optional } from "./ways.js";

/** What the job is, what of it does not agree, and what waits. */
export const jobPage: View = {
  name: "job",
  heading: "The job",
  blocks: [optional(says`${job.note}`)],
};
