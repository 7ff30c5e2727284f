import { isJob, isWork } from "./bring-forward.js";
import type { JobRecord, WorkRecord } from "./records.js";

/** All jobs with their work, as one file. */
export interface AllJobs {
  readonly thrumLoom: 1;
  readonly jobs: readonly JobRecord[];
  readonly work: readonly WorkRecord[];
}

const MOST = 20_000_000;

/** The text of a `.thrum.json`; what undo needs stays on the device. */
export function fileOf(jobs: readonly JobRecord[], work: readonly WorkRecord[]): string {
  const file: AllJobs = { thrumLoom: 1, jobs, work: work.map((one) => ({ ...one, past: [] })) };
  return `${JSON.stringify(file, null, 1)}\n`;
}

const isList = (value: unknown): value is readonly Readonly<Record<string, unknown>>[] =>
  Array.isArray(value) && value.every((one) => typeof one === "object" && one !== null);

/** The file read, all or nothing; null for what is no such file. */
export function readFile(text: string): AllJobs | null {
  if (text.length > MOST) return null;
  try {
    const file = JSON.parse(text) as Readonly<Record<string, unknown>> | null;
    if (file?.["thrumLoom"] !== 1 || !isList(file["jobs"]) || !isList(file["work"])) return null;
    const { jobs, work } = file;
    if (![...jobs, ...work].every((one) => one["schema"] === 1) || !jobs.every(isJob) || !work.every(isWork))
      return null;
    return { thrumLoom: 1, jobs, work };
  } catch {
    return null;
  }
}

/** Of the work in a file what is further on than the work that is here: a newer count is never replaced. */
export function furtherOn(inFile: readonly WorkRecord[], here: readonly WorkRecord[]): readonly WorkRecord[] {
  return inFile.filter(({ job, seq }) => (here.find((one) => one.job === job)?.seq ?? -1) < seq);
}
