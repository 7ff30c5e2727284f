import type { Task, WorkRecord } from "../keep/records.js";
import { loom as words } from "../words/loom.js";
import type { Change } from "./act.js";
import { stepDone } from "./act.js";
import type { Loom, Step } from "./loom.js";

/** A step, or a chain to be laid in its place. */
export interface BenchStep extends Step {
  readonly chain: number | null;
}

/** What is done one after the other: the chains first where they are laid, then the sentences of the plan. */
export function stepsOf(task: "cut" | "lay" | "through", loom: Pick<Loom, "steps" | "laid">): readonly BenchStep[] {
  const chains = task !== "lay" ? [] : (loom.laid ?? []);
  const laid = chains.map(({ place, chain, firstEndOn }): BenchStep => {
    return { as: "step", says: `${words.place(place, chain)}. ${words.firstEndAt(firstEndOn)}`, chain };
  });
  return [...laid, ...(loom.steps[task] ?? []).map((step) => ({ ...step, chain: null }))];
}

/** One step done; with the last the task is. */
export function nextStep(work: WorkRecord, task: "cut" | "lay" | "through", steps: readonly BenchStep[]): Change {
  const done = work.here.steps[task]?.length ?? 0;
  const change = stepDone(work, task, done + 1, steps[done + 1]?.says ?? words.allSteps);
  if (done + 1 < steps.length) return change;
  return { ...change, progress: { done: [...(work.progress.done ?? []), task] } };
}

/** A shaft looked at; another number is a note. */
export function shaftSeen(work: WorkRecord, loom: Pick<Loom, "shafts">, found: number | null): Change {
  const shafts = loom.shafts ?? [];
  const done = work.here.steps.shafts?.length ?? 0;
  const row = shafts[done];
  const change = stepDone(
    work,
    "shafts" satisfies Task,
    done + 1,
    shafts[done + 1] === undefined ? words.allShafts : words.shaftBig(String(shafts[done + 1]?.shaft)),
  );
  const note =
    row === undefined || found === null ? [] : [{ end: 1, says: words.shaftNote(String(row.shaft), found, row.ends) }];
  const isLast = done + 1 >= shafts.length;
  return {
    ...change,
    progress: {
      ...(note.length === 0 ? {} : { notes: [...(work.progress.notes ?? []), ...note] }),
      ...(isLast ? { done: [...(work.progress.done ?? []), "shafts" as const] } : {}),
    },
  };
}
