import { openDB } from "idb";
import type { DBSchema, IDBPDatabase } from "idb";
import { shallowRef } from "vue";
import { jobForward, workForward } from "./bring-forward.js";
import type { Found } from "./bring-forward.js";
import { FIRST_SETTINGS } from "./records.js";
import type { JobRecord, Settings, WorkRecord } from "./records.js";

interface Kept extends DBSchema {
  jobs: { key: string; value: JobRecord };
  work: { key: string; value: WorkRecord };
  settings: { key: string; value: Settings };
}

/** Whether this browser keeps anything: a refusal is told, and everything goes on in memory. */
export const isKept = shallowRef(true);
const memory = { jobs: new Map<string, JobRecord>(), work: new Map<string, WorkRecord>(), settings: FIRST_SETTINGS };
let opened: Promise<IDBPDatabase<Kept> | null> | undefined;

function database(): Promise<IDBPDatabase<Kept> | null> {
  const open = async (): Promise<IDBPDatabase<Kept> | null> => {
    try {
      return await openDB<Kept>("thrum-at-the-loom", 1, {
        upgrade(made) {
          made.createObjectStore("jobs", { keyPath: "id" });
          made.createObjectStore("work", { keyPath: "job" });
          made.createObjectStore("settings");
        },
      });
    } catch {
      isKept.value = false;
      return null;
    }
  };
  opened ??= open();
  return opened;
}

async function read<T>(ask: (from: IDBPDatabase<Kept>) => Promise<T>, otherwise: T): Promise<T> {
  const from = await database();
  if (from === null) return otherwise;
  try {
    return await ask(from);
  } catch {
    isKept.value = false;
    return otherwise;
  }
}

async function write(put: (to: IDBPDatabase<Kept>) => Promise<unknown>): Promise<boolean> {
  const to = await database();
  if (to === null) return false;
  try {
    await put(to);
    isKept.value = true;
    return true;
  } catch {
    isKept.value = false;
    return false;
  }
}

const known = <T>(found: Found<T> | null): T | null => (found?.is === "here" ? found.record : null);

/** Every job, those taken away too. */
export async function jobs(): Promise<readonly JobRecord[]> {
  const kept = await read((from) => from.getAll("jobs"), []);
  const here = kept.filter(({ id }) => !memory.jobs.has(id)).flatMap((one) => known(jobForward({ ...one })) ?? []);
  return [...here, ...memory.jobs.values()];
}

export async function job(id: string): Promise<JobRecord | null> {
  const kept = memory.jobs.get(id) ?? (await read((from) => from.get("jobs", id), undefined));
  return kept === undefined ? null : known(jobForward({ ...kept }));
}

export async function putJob(record: JobRecord): Promise<void> {
  if (await write((to) => to.put("jobs", record))) memory.jobs.delete(record.id);
  else memory.jobs.set(record.id, record);
}

/** A job gone for good, with its work. */
export async function dropJob(id: string): Promise<void> {
  memory.jobs.delete(id);
  memory.work.delete(id);
  await write(async (to) => {
    const at = to.transaction(["jobs", "work"], "readwrite");
    await Promise.all([at.objectStore("jobs").delete(id), at.objectStore("work").delete(id), at.done]);
  });
}

/** The work at a job as it was found: a newer app's is told, and never written over. */
export async function workFound(jobId: string): Promise<Found<WorkRecord> | null> {
  const kept = memory.work.get(jobId) ?? (await read((from) => from.get("work", jobId), undefined));
  return kept === undefined ? null : workForward({ ...kept });
}

export async function work(jobId: string): Promise<WorkRecord | null> {
  return known(await workFound(jobId));
}

/** Keeps the work, and the job where an act changed it, both or neither; says whether the device took it. */
export async function putWork(record: WorkRecord, changed: JobRecord | null = null): Promise<boolean> {
  const isTaken = await write(async (to) => {
    const at = to.transaction(["work", "jobs"], "readwrite");
    void at.objectStore("work").put(record);
    if (changed !== null) void at.objectStore("jobs").put(changed);
    at.commit();
    await at.done;
  });
  if (isTaken) memory.work.delete(record.job);
  else {
    memory.work.set(record.job, record);
    if (changed !== null) memory.jobs.set(changed.id, changed);
  }
  return isTaken;
}

export async function settings(): Promise<Settings> {
  const kept = await read((from) => from.get("settings", "settings"), undefined);
  return { ...memory.settings, ...kept };
}

export async function putSettings(record: Settings): Promise<void> {
  memory.settings = record;
  await write((to) => to.put("settings", record, "settings"));
}

/** Asks the browser, at the first count, not to clear what is kept when it runs short of room. */
export async function askToKeep(): Promise<void> {
  try {
    await navigator.storage.persist();
  } catch {
    // A browser without it keeps as long as it likes: the shelf says so.
  }
}

/** Whether the browser may clear what is kept. */
export async function mayBeCleared(): Promise<boolean> {
  try {
    return !(await navigator.storage.persisted());
  } catch {
    return true;
  }
}
