import { computed, shallowRef } from "vue";
import type { ComputedRef, ShallowRef } from "vue";
import type { WrittenValue } from "@thrum/plan";
import type { JobRecord } from "../keep/records.js";
import { job, putJob } from "../keep/store.js";
import { ask } from "../reckon/client.js";
import type { Drafted } from "../reckon/plan-views.js";
import { route } from "../route.js";
import type { Change } from "./draft.js";
import { isExample } from "./examples.js";

export interface OpenDraft {
  readonly record: ShallowRef<JobRecord | null>;
  readonly drafted: ShallowRef<Drafted | null>;
  /** There is no such job on this device. */
  readonly missing: ShallowRef<boolean>;
  readonly written: ComputedRef<WrittenValue>;
  answer(...changes: readonly Change[]): Promise<void>;
}

/** A job made now, with nothing in it. */
export function newRecord(text = "", id: string = crypto.randomUUID(), title = ""): JobRecord {
  return { schema: 1, id, title, changed: Date.now(), saved: null, removed: null, text, typed: {} };
}

/** Kept, or one of the examples, which is kept once it is changed; or the job that the address carries. */
export async function jobFound(id: string): Promise<JobRecord | null> {
  const kept = await job(id);
  if (kept !== null && kept.removed === null) return kept;
  const { carried } = route.value;
  if (carried !== null) {
    const text = (await import("./link.js")).jobOfLink(carried);
    if (text !== null) return newRecord(text, id, (await ask("drafted", { text, typed: {} }, [])).title);
  }
  if (!isExample(id)) return kept;
  const text = await ask("example", id);
  return newRecord(text, id, (await ask("drafted", { text, typed: {} }, [])).title);
}

/** The job on the screen: each answer is reckoned and kept before the next is taken. */
export function useDraft(id: string): OpenDraft {
  const record = shallowRef<JobRecord | null>(null);
  const drafted = shallowRef<Drafted | null>(null);
  const missing = shallowRef(false);

  async function taken(changes: readonly Change[]): Promise<void> {
    const before = record.value;
    if (before === null) return;
    const after = await ask("drafted", { text: before.text, typed: before.typed }, changes);
    drafted.value = after;
    const { text, typed, title } = after;
    record.value = { ...before, text, typed, title, changed: changes.length === 0 ? before.changed : Date.now() };
    if (changes.length > 0) await putJob(record.value);
  }

  let queue: Promise<void> = jobFound(id).then((one) => {
    record.value = one;
    missing.value = one === null;
    return taken([]);
  });
  const answer = (...changes: readonly Change[]): Promise<void> => (queue = queue.then(() => taken(changes)));
  return { record, drafted, missing, written: computed(() => drafted.value?.written ?? {}), answer };
}

/** What stands at a place of the job; null where nothing does. */
export function writtenAt(written: WrittenValue, steps: readonly (string | number)[]): WrittenValue | null {
  let at: unknown = written;
  for (const step of steps) at = typeof at === "object" && at !== null ? Reflect.get(at, step) : undefined;
  return at === undefined || at === "" ? null : (at as WrittenValue);
}
