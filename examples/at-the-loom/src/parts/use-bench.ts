import { onScopeDispose, shallowRef } from "vue";
import type { ShallowRef } from "vue";
import type { Task } from "../keep/records.js";
import { job as jobOf } from "../keep/store.js";
import { goInstead, route } from "../route.js";
import { openBench } from "../work/bench.js";
import type { Bench } from "../work/bench.js";
import { isLate } from "../work/stopped.js";
import { keepAwake } from "../senses/awake.js";
import { readSettings } from "./settings.js";

let current: Bench | null = null;

async function benchOf(id: string): Promise<{ readonly bench: Bench | null; readonly isNew: boolean }> {
  if (current?.id === id && (await jobOf(id))?.text === current.job.value.text) return { bench: current, isNew: false };
  current?.leave();
  current = await openBench(id);
  return { bench: current, isNew: true };
}

/** The work at the job of the address, with this task open; after a while away first where she stopped. */
export function useBench(task: Task | null): {
  readonly bench: ShallowRef<Bench | null>;
  readonly fault: ShallowRef<string | null>;
} {
  const bench = shallowRef<Bench | null>(null);
  const fault = shallowRef<string | null>(null);
  const { job } = route.value;
  async function start(): Promise<void> {
    await readSettings();
    if (job === null) {
      goInstead("shelf");
      return;
    }
    const { bench: found, isNew } = await benchOf(job);
    if (found === null) {
      goInstead("shelf");
      return;
    }
    if (task !== null && isNew && isLate(found.work.value, Date.now())) {
      goInstead("stopped", job);
      return;
    }
    if (task !== null) found.open(task);
    bench.value = found;
  }
  start().catch((error: unknown) => {
    fault.value = error instanceof Error ? error.message : String(error);
  });
  if (task !== null) onScopeDispose(keepAwake());
  return { bench, fault };
}
