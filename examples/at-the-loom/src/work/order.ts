import { isTicked } from "@thrum/plan";
import type { Task, WorkRecord } from "../keep/records.js";
import { loom as words } from "../words/loom.js";
import { threadsCounted, toCount } from "./count.js";
import type { Loom } from "./loom.js";
import { allTied, toTie } from "./tie.js";

/** A row of the order of work. */
export interface TaskRow {
  readonly task: Task;
  readonly is: "done" | "here" | "to come";
  readonly state: string;
}

interface Standing {
  readonly isDone: boolean;
  readonly state: string;
}

const TASKS = ["count", "wind", "cut", "lay", "tie", "through", "shafts", "inches", "tape", "measures"] as const;
const AFRESH: readonly Task[] = ["count", "cut", "tie"];
const share = (done: number, of: number): string => `${String(done)} of ${String(of)}`;

function standing(task: Task, { progress, here }: WorkRecord, loom: Loom): Standing {
  const steps = here.steps[task]?.length ?? 0;
  const marked = (key: NonNullable<typeof progress.done>[number]): boolean => progress.done?.includes(key) ?? false;
  switch (task) {
    case "count": {
      const groups = loom.groups ?? [];
      const all = groups.reduce((sum, { oldThreads }) => sum + oldThreads, 0);
      return {
        isDone: groups.length > 0 && toCount(progress, groups) === null,
        state: share(threadsCounted(progress, groups), all),
      };
    }
    case "wind": {
      const chains = loom.chains ?? [];
      const done = chains.filter(({ chain }) => isTicked(progress.wound, chain)).length;
      return {
        isDone: chains.length > 0 && done === chains.length,
        state: `${share(done, chains.length)} ${chains.length === 1 ? "chain" : "chains"}`,
      };
    }
    case "tie": {
      const rows = loom.rows ?? [];
      return {
        isDone: rows.length > 0 && toTie(progress, rows) === null,
        state: share(allTied(progress, rows), loom.knots),
      };
    }
    case "cut":
    case "lay":
    case "through":
      return {
        isDone: marked(task),
        state: steps === 0 || marked(task) ? "" : share(steps, loom.steps[task]?.length ?? 0),
      };
    case "shafts":
      return { isDone: marked("shafts"), state: "" };
    case "tape": {
      const pieces = loom.marks?.length ?? 0;
      const woven = progress.woven ?? 0;
      return {
        isDone: pieces > 0 && woven >= pieces,
        state: woven === 0 ? words.plural(pieces, "piece") : share(woven, pieces),
      };
    }
    case "inches":
    case "measures":
      return { isDone: steps > 0, state: "" };
  }
}

/** The tasks of the work, each with where it stands; the order is offered, not forced. */
export function orderOfWork(work: WorkRecord, loom: Loom): readonly TaskRow[] {
  return TASKS.filter((task) => !(loom.isAfresh && AFRESH.includes(task))).map((task): TaskRow => {
    const waits = loom.waits[task] ?? [];
    const { isDone, state } = standing(task, work, loom);
    const is = isDone ? "done" : work.here.task === task ? "here" : "to come";
    return { task, is, state: waits.length > 0 ? words.waitsHere(waits) : state };
  });
}
