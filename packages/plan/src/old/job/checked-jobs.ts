import type { Job } from "./job.js";

/** Jobs that were read from a file: frozen through and through, they need not be checked a second time. */
const read = new WeakSet<Job>();

/** Keeps in mind that a job was checked as it was read. */
export function rememberChecked(job: Job): void {
  read.add(job);
}

/** Whether it is one of those, and no copy. */
export function isChecked(job: unknown): job is Job {
  return typeof job === "object" && job !== null && read.has(job as Job);
}
