import type { Progress } from "@thrum/plan";
import type { Before, Here, Lines, Task, Was, WorkRecord } from "../keep/records.js";
import type { Loom } from "./loom.js";

/** What one tap changes, and what is said of it. */
export interface Change {
  readonly progress?: Lines;
  readonly here?: Partial<Here>;
  readonly says: string;
  /** Two for the end of a stripe, none for silence. */
  readonly clicks?: 0 | 1 | 2;
  /** What was found, as it stood in the job before. */
  readonly found?: string;
  /** Another place of the job, as it stood before. */
  readonly was?: Was;
}

const MOST_PAST = 500;
const KEYS = [
  "thrumProgress",
  "job",
  "groups",
  "chains",
  "counted",
  "wound",
  "winding",
  "done",
  "tied",
  "stopped",
  "leftOver",
  "woven",
  "wovenTo",
  "notes",
] as const satisfies readonly (keyof Progress)[];

/** A progress with these lines in the place of its own; undefined takes a line out. */
export function withLines(progress: Progress, lines: Lines): Progress {
  const all: Lines = { ...progress, ...lines };
  const kept = KEYS.flatMap((key) => (all[key] === undefined ? [] : [[key, all[key]] as const]));
  return { job: progress.job, ...Object.fromEntries(kept) };
}

/** The lines that stand here and read otherwise there. */
export function linesBefore(before: Progress, after: Progress): Lines {
  const differ = KEYS.filter((key) => before[key] !== after[key]);
  return Object.fromEntries(differ.map((key) => [key, before[key]]));
}

/** Work not yet begun at this plan. */
export function begun(job: string, name: string, loom: Pick<Loom, "groups" | "chains">): WorkRecord {
  const groups = loom.groups?.map(({ ends, yarns, order }) => ({
    ends,
    yarns,
    ...(order === undefined ? {} : { order }),
  }));
  const progress: Progress = {
    thrumProgress: 1,
    job: name,
    ...(groups === undefined ? {} : { groups }),
    ...(loom.chains === null ? {} : { chains: loom.chains.map(({ ends }) => ends) }),
  };
  const here: Here = { task: "count", open: null, steps: {}, pace: [] };
  return { schema: 1, job, seq: 0, at: 0, progress, here, past: [] };
}

/** The work after one act. */
export function acted(work: WorkRecord, { progress, here, found, was }: Change, now: number): WorkRecord {
  const after = progress === undefined ? work.progress : withLines(work.progress, progress);
  const before: Before = {
    here: work.here,
    progress: linesBefore(work.progress, after),
    found: found ?? null,
    ...(was === undefined ? {} : { was }),
  };
  return {
    ...work,
    seq: work.seq + 1,
    at: now,
    progress: after,
    here: here === undefined ? work.here : { ...work.here, ...here },
    past: [...work.past.slice(1 - MOST_PAST), before],
  };
}

/** The work before its last act; null where there is none left. */
export function undone(work: WorkRecord, now: number): WorkRecord | null {
  const before = work.past.at(-1);
  if (before === undefined) return null;
  const progress = withLines(work.progress, before.progress);
  return { ...work, seq: work.seq + 1, at: now, progress, here: before.here, past: work.past.slice(0, -1) };
}

/** Another task opened is no act: it is kept, and undo does not lead back over it. */
export function opened(work: WorkRecord, task: Task): WorkRecord {
  return { ...work, here: { ...work.here, task, open: null } };
}

/** One more step of a task done. */
export function stepDone(work: WorkRecord, task: Task, step: number, says: string): Change {
  const done = [...(work.here.steps[task] ?? []), step];
  return { here: { steps: { ...work.here.steps, [task]: done } }, says };
}
