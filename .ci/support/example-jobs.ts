// Jobs from their text, and the texts of the nine jobs of the examples.
import { readdirSync, readFileSync } from "node:fs";
import { faultsText } from "../../packages/plan/src/job/fault.js";
import type { Job } from "../../packages/plan/src/job/job.js";
import { readJob } from "../../packages/plan/src/job/read-job.js";

const FOLDER = "examples/jobs/";

/** The nine, by the names of their files without the ending. */
export const exampleNames: readonly string[] = readdirSync(FOLDER)
  .filter((name) => /^\d[^.]*\.yaml$/u.test(name))
  .map((name) => name.replace(".yaml", ""));

/** The text of one of them. */
export function exampleText(name: string): string {
  return readFileSync(`${FOLDER}${name}.yaml`, "utf8");
}

/** A job of its text. */
export function jobIn(text: string): Job {
  const reading = readJob(text);
  if (!reading.ok) throw new Error(`${faultsText(reading.faults)}\n${text}`);
  return reading.value;
}
