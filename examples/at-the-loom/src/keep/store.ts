import { openDB } from "idb";
import type { DBSchema, IDBPDatabase } from "idb";
import { FIRST_SETTINGS } from "./records.js";
import type { JobRecord, Settings, WorkRecord } from "./records.js";

interface Kept extends DBSchema {
  jobs: { key: string; value: JobRecord };
  work: { key: string; value: WorkRecord };
  settings: { key: string; value: Settings };
}

let opened: Promise<IDBPDatabase<Kept>> | undefined;

function database(): Promise<IDBPDatabase<Kept>> {
  opened ??= openDB<Kept>("thrum-at-the-loom", 1, {
    upgrade(made) {
      made.createObjectStore("jobs", { keyPath: "id" });
      made.createObjectStore("work", { keyPath: "job" });
      made.createObjectStore("settings");
    },
  });
  return opened;
}

/** Every job, those taken away too. */
export async function jobs(): Promise<readonly JobRecord[]> {
  return (await database()).getAll("jobs");
}

export async function job(id: string): Promise<JobRecord | null> {
  return (await (await database()).get("jobs", id)) ?? null;
}

export async function putJob(record: JobRecord): Promise<void> {
  await (await database()).put("jobs", record);
}

/** A job gone for good, with its work. */
export async function dropJob(id: string): Promise<void> {
  const at = (await database()).transaction(["jobs", "work"], "readwrite");
  await Promise.all([at.objectStore("jobs").delete(id), at.objectStore("work").delete(id), at.done]);
}

export async function work(jobId: string): Promise<WorkRecord | null> {
  return (await (await database()).get("work", jobId)) ?? null;
}

export async function putWork(record: WorkRecord): Promise<void> {
  await (await database()).put("work", record);
}

export async function settings(): Promise<Settings> {
  return (await (await database()).get("settings", "settings")) ?? FIRST_SETTINGS;
}

export async function putSettings(record: Settings): Promise<void> {
  await (await database()).put("settings", record, "settings");
}
