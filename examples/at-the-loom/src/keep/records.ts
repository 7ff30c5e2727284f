import type { Progress } from "@thrum/plan";

/** A job kept on the device: store "jobs", key `id`. */
export interface JobRecord {
  readonly schema: 1;
  readonly id: string;
  readonly title: string;
  /** Milliseconds, as `Date.now()`. */
  readonly changed: number;
  /** When it was last saved to a file. */
  readonly saved: number | null;
  /** When it was taken away; kept 30 days. */
  readonly removed: number | null;
  /** The job file: always one that reads, as every key may be left out. */
  readonly text: string;
  /** What does not read yet, by path: `loom.reed` to `10 per`. */
  readonly typed: Readonly<Record<string, string>>;
}

export type Task = "count" | "wind" | "cut" | "lay" | "tie" | "through" | "shafts" | "inches" | "tape" | "measures";

/** Only what the progress of the package does not hold: the task open, steps done within one, her pace. */
export interface Here {
  readonly task: Task;
  readonly open: "left over" | "another number" | null;
  readonly steps: Readonly<Partial<Record<Task, readonly number[]>>>;
  readonly pace: readonly (readonly [at: number, knots: number])[];
}

/** Lines of a progress, each as it stood; undefined where there was none. */
export type Lines = { readonly [K in keyof Progress]?: Progress[K] | undefined };

/** A place of the job and what was written there, as JSON. */
export interface Was {
  readonly path: readonly string[];
  readonly value: string;
}

/** What undo needs of one act: only the lines that differ. */
export interface Before {
  readonly here: Here;
  readonly progress: Lines;
  /** What was found, as it stood in the job; null where the act left it alone. */
  readonly found: string | null;
  /** Another place of the job that the act changed, as it stood there. */
  readonly was?: Was;
}

/** The work at one job: store "work", key `job`. */
export interface WorkRecord {
  readonly schema: 1;
  readonly job: string;
  /** Grows by 1 with each act. */
  readonly seq: number;
  readonly at: number;
  readonly progress: Progress;
  readonly here: Here;
  /** For undo, the last 500. */
  readonly past: readonly Before[];
}

export interface Settings {
  readonly schema: 1;
  readonly tap: "group" | "knot";
  readonly hand: "left" | "right";
  readonly shade: "" | "light" | "dark";
  readonly voice: boolean;
  readonly every: 1 | 5;
  /** Of the voice, 1 as it speaks by itself. */
  readonly speed: number;
  readonly larger: boolean;
  readonly clicks: boolean;
  readonly locale: string;
}

export const FIRST_SETTINGS: Settings = {
  schema: 1,
  tap: "group",
  hand: "right",
  shade: "",
  voice: false,
  every: 1,
  speed: 0.95,
  larger: false,
  clicks: false,
  locale: "en-GB",
};
