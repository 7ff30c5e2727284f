import { jobForm } from "./job.js";
import type { Job } from "./job.js";
import { yamlText } from "./yaml-lines.js";

/**
 * A job as the text of a job file; what is read from it is the same job.
 *
 * @param job a job such as `readJob` and `checkedJob` give
 * @returns lines of YAML, in the order of the keys of a job
 */
export function jobText(job: Job): string {
  return yamlText(jobForm.write(job));
}
