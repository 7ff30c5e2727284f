import { LineCounter } from "yaml";
import { QuantityError } from "@thrum/maths";
import { changedTree, groupIn, treeOfNode } from "./changed-tree.js";
import type { JobChange } from "./changed-tree.js";
import type { Branch } from "./form.js";
import { jobForm } from "./job.js";
import type { Job } from "./job.js";
import { readJob } from "./read-job.js";
import { writtenAnew } from "./written-anew.js";
import type { Remark } from "./written-anew.js";
import { composed } from "./yaml-document.js";
import { yamlNode } from "./yaml-node.js";

export type { JobChange } from "./changed-tree.js";
export type { Remark } from "./written-anew.js";

const branchesOf = (job: Job): readonly Branch[] => groupIn(jobForm.write(job)) ?? [];

/** What a file without faults says, as a job writes it. */
function readBranches(text: string): readonly Branch[] {
  const reading = readJob(text);
  if (reading.ok) return branchesOf(reading.value);
  const [first, ...others] = reading.faults;
  throw new QuantityError(first, ...others);
}

/** What a file says, whether or not it reads as a job. */
function writtenBranches(text: string): readonly Branch[] {
  const { fault } = composed(text, new LineCounter());
  if (fault !== null) throw new QuantityError({ ...fault, function: "jobTextWith" });
  return groupIn(treeOfNode(yamlNode(text).node)) ?? [];
}

const isJob = (now: Job | readonly JobChange[]): now is Job => !Array.isArray(now);

/**
 * A job file with what it says changed value by value: all that stays stands as it was written, with its spaces and
 * remarks. A value that is taken away takes its remark with it, and every group that is left with nothing.
 *
 * @param text YAML of a job, as little of one as an empty text
 * @param now the same job, changed; or changes by their places, as `writtenPath` gives them, one after the other
 * @param remarks to be put behind values; one that stands there follows the new one
 * @returns the changed text: what is read from it is the job. What a change puts in is not read: that is `readJob`'s
 * @throws QuantityError "unreadable" for a text that is no YAML; for a job, with every fault of a text that is none
 * @example const sleyed = [{ path: ["loom", "sley"], value: "2" }];
 * jobTextWith("loom: { reed: 10 per inch } # maple", sleyed) // "loom: { reed: 10 per inch, sley: 2 } # maple\n"
 */
export function jobTextWith(text: string, now: Job | readonly JobChange[], remarks: readonly Remark[] = []): string {
  if (isJob(now)) return writtenAnew(text, readBranches(text), branchesOf(now), remarks);
  const was = writtenBranches(text);
  return writtenAnew(text, was, changedTree(was, jobForm, now), remarks);
}
