import { checked, refused } from "./checked-job.js";
import type { JobReading } from "./checked-job.js";
import { textFault } from "./text-fault.js";
import { yamlNode } from "./yaml-node.js";

const LONGEST = 100_000;

/**
 * Reads a job file: YAML 1.2, and so JSON too.
 *
 * @param text the whole file
 * @returns the job with what is told of it, or all its faults at once, each with its line and what to write instead
 */
export function readJob(text: unknown): JobReading {
  const unread = textFault(text, "the text of a job file", LONGEST);
  if (unread !== null) return refused("readJob", [unread]);
  const { node, faults } = yamlNode(String(text));
  const [first, ...others] = faults;
  if (node.kind === "nothing" && first !== undefined) return refused("readJob", [first, ...others]);
  return checked("readJob", node, faults);
}
