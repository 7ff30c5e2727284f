import { shallowRef } from "vue";
import type { ShallowRef } from "vue";
import { hold } from "../keep/lock.js";
import type { Held } from "../keep/lock.js";
import { furthest, markOf, putMark } from "../keep/mark.js";
import { placed, placeText } from "../keep/place.js";
import type { JobRecord, Lines, Task, WorkRecord } from "../keep/records.js";
import { jobFound } from "../draft/use-draft.js";
import { askToKeep, isKept, job as jobOf, putJob, putWork, workFound } from "../keep/store.js";
import { ask } from "../reckon/client.js";
import { noteAt, route } from "../route.js";
import { acted, begun, linesBefore, opened, undone } from "./act.js";
import type { Change } from "./act.js";
import { isOldKept, planChange } from "./changed.js";
import type { PlanChange } from "./changed.js";
import type { Loom } from "./loom.js";

/** The work at one job, as the screens see it. */
export interface Bench {
  readonly id: string;
  readonly job: ShallowRef<JobRecord>;
  readonly loom: ShallowRef<Loom>;
  readonly work: ShallowRef<WorkRecord>;
  /** What differs since the first tick, until she has answered. */
  readonly change: ShallowRef<PlanChange>;
  readonly state: ShallowRef<"ready" | "elsewhere" | "newer">;
  act: (change: Change, job?: JobRecord) => void;
  undo: () => Promise<boolean>;
  /** Opens a task: kept, but no act. */
  open: (task: Task) => void;
  useHere: () => Promise<void>;
  leave: () => void;
}

async function workOf(
  record: JobRecord,
  loom: Loom,
): Promise<{ readonly work: WorkRecord; readonly base: number; readonly isNewer: boolean }> {
  const fresh = begun(record.id, `${record.title === "" ? "job" : record.title}.yaml`, loom);
  const found = await workFound(record.id);
  if (found?.is === "newer") return { work: fresh, base: 0, isNewer: true };
  const kept = found?.record ?? null;
  const mark = markOf(record.id);
  const work = furthest(kept, mark, fresh);
  const { at, seq } = route.value;
  // The address is further on only where this device did not keep the last taps.
  const isFurther = at !== null && seq > work.seq;
  return { work: isFurther ? { ...placed(work, at), seq } : work, base: kept?.seq ?? -1, isNewer: false };
}

/** Kept, or an example or a job of the address, which is kept from now on. */
async function recordOf(id: string): Promise<JobRecord | null> {
  const kept = await jobOf(id);
  if (kept !== null) return kept;
  const found = await jobFound(id);
  if (found !== null) await putJob(found);
  return found;
}

const loomOf = (text: string, work: WorkRecord): Promise<Loom> => ask("loom", text, work.progress, isOldKept(work));

/** Opens the work at a job; null where there is no such job. */
export async function openBench(id: string): Promise<Bench | null> {
  const record = await recordOf(id);
  if (record === null) return null;
  const job = shallowRef(record);
  const first = await ask("loom", record.text);
  const found = await workOf(record, first);
  const work = shallowRef(found.work);
  const loom = shallowRef(
    found.work.progress.wovenTo === undefined ? first : await ask("loom", record.text, found.work.progress),
  );
  const change = shallowRef<PlanChange>(planChange(work.value.progress, loom.value));
  const state = shallowRef<Bench["state"]["value"]>(found.isNewer ? "newer" : "ready");
  /** The last record that the device surely has, and what it holds. */
  let [base, kept] = [found.base, found.work];
  let putting: Promise<void> | null = null;
  let changedJob: JobRecord | null = null;
  let held: Held;

  const taken = (): void => {
    if (state.value === "ready") state.value = "elsewhere";
  };
  held = await hold(id, { onTaken: taken });
  if (!held.isMine) taken();

  /** The place in the address, where the device refuses it. */
  async function noted(after: WorkRecord): Promise<void> {
    noteAt(placeText(after), after.seq, route.value.carried);
    if (isKept.value) return;
    const { linkOf } = await import("../draft/link.js");
    if (work.value === after) noteAt(placeText(after), after.seq, linkOf(job.value.text)?.slice(4) ?? null);
  }

  /** One put at a time, always of the newest. */
  async function put(): Promise<void> {
    while (work.value !== kept) {
      const [now, changed] = [work.value, changedJob];
      changedJob = null;
      const isTaken = await putWork(now, changed);
      kept = now;
      if (isTaken) base = now.seq;
      else {
        void noted(work.value);
        if (work.value === now) break;
      }
    }
    putting = null;
  }

  let since: Lines = {};
  function keep(after: WorkRecord, changed: JobRecord | null): void {
    const before = work.value;
    if (before.seq === 0) void askToKeep();
    const lines = linesBefore(after.progress, before.progress);
    since = base === before.seq ? lines : { ...since, ...lines };
    const isMarked = putMark(id, { seq: after.seq, base, at: after.at, here: after.here, lines: since });
    work.value = after;
    if (changed !== null) changedJob = job.value = changed;
    if (!isKept.value || !isMarked) void noted(after);
    putting ??= put();
  }

  async function again(): Promise<void> {
    loom.value = await loomOf(job.value.text, work.value);
    change.value = planChange(work.value.progress, loom.value);
  }
  /** Whether the plan has to be worked out once more. */
  const isOther = (before: WorkRecord, after: WorkRecord): boolean =>
    before.progress.wovenTo !== after.progress.wovenTo || isOldKept(before) !== isOldKept(after);

  return {
    id,
    job,
    loom,
    work,
    change,
    state,
    act(next, changed) {
      if (state.value !== "ready") return;
      const before = work.value;
      keep(acted(before, next, Date.now()), changed ?? null);
      // The plan is held against the ticks anew only where either has changed.
      if (next.progress?.groups !== undefined || next.progress?.chains !== undefined || change.value.is !== "same")
        change.value = planChange(work.value.progress, loom.value);
      if (changed !== undefined || isOther(before, work.value)) void again();
    },
    async undo() {
      const last = work.value.past.at(-1);
      const after = undone(work.value, Date.now());
      if (state.value !== "ready" || last === undefined || after === null) return false;
      const before = work.value;
      const { found, was } = last;
      const withFound = found === null ? null : await ask("withFound", job.value.text, found);
      const text = was === undefined ? withFound : await ask("withValue", job.value.text, was);
      keep(after, text === null ? null : { ...job.value, text, changed: Date.now() });
      change.value = planChange(after.progress, loom.value);
      if (text !== null || isOther(before, after)) await again();
      return true;
    },
    open(task) {
      if (state.value !== "ready" || (work.value.here.task === task && work.value.here.open === null)) return;
      keep({ ...opened(work.value, task), seq: work.value.seq + 1, at: work.value.at }, null);
    },
    async useHere() {
      held = await hold(id, { steal: true, onTaken: taken });
      const fresh = await workOf(job.value, loom.value);
      [base, kept, work.value, state.value] = [fresh.base, fresh.work, fresh.work, "ready"];
    },
    leave() {
      held.letGo();
    },
  };
}
