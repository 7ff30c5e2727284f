// Jobs and work put on a device as the app keeps them, so that a test begins in the middle of the work.
import { readFileSync } from "node:fs";
import type { BrowserContext } from "playwright-core";
import { root } from "#ci/built.mjs";
import type { JobRecord, Settings, WorkRecord } from "../src/keep/records.js";
import { begun } from "../src/work/act.js";
import type { Loom } from "../src/work/loom.js";
import { loomOf } from "./loom-of.js";

export const jobText = (file: string): string => readFileSync(`${root}examples/jobs/${file}`, "utf8");

export function jobRecord(id: string, text: string, title = id): JobRecord {
  return { schema: 1, id, title, changed: Date.now(), saved: null, removed: null, text, typed: {} };
}

/** Work at an example, begun a moment ago, with these lines of progress. */
export function workRecord(
  id: string,
  loom: Loom,
  { here = {}, progress = {} }: { here?: Partial<WorkRecord["here"]>; progress?: Partial<WorkRecord["progress"]> } = {},
): WorkRecord {
  const fresh = begun(id, `${id}.yaml`, loom);
  return {
    ...fresh,
    seq: 1,
    at: Date.now(),
    here: { ...fresh.here, ...here },
    progress: { ...fresh.progress, ...progress },
  };
}

export const napkins = loomOf("2-hall-napkins.yaml");

interface Kept {
  readonly jobs?: readonly JobRecord[];
  readonly work?: readonly WorkRecord[];
  readonly settings?: Partial<Settings>;
}

/** Puts records on the device, in stores as the app makes them. */
export async function keep(device: BrowserContext, address: string, kept: Kept): Promise<void> {
  const page = await device.newPage();
  await page.goto(`${address}strip.svg`);
  await page.evaluate(
    ([jobs, work, settings]) =>
      new Promise<void>((resolve, reject) => {
        const asked = indexedDB.open("thrum-at-the-loom", 1);
        asked.onupgradeneeded = () => {
          asked.result.createObjectStore("jobs", { keyPath: "id" });
          asked.result.createObjectStore("work", { keyPath: "job" });
          asked.result.createObjectStore("settings");
        };
        asked.onsuccess = () => {
          const at = asked.result.transaction(["jobs", "work", "settings"], "readwrite");
          for (const one of jobs) at.objectStore("jobs").put(one);
          for (const one of work) at.objectStore("work").put(one);
          if (settings !== null) at.objectStore("settings").put(settings, "settings");
          at.oncomplete = () => {
            asked.result.close();
            resolve();
          };
          at.onerror = () => {
            reject(new Error("not kept"));
          };
        };
      }),
    [kept.jobs ?? [], kept.work ?? [], kept.settings ?? null] as const,
  );
  await page.close();
}

/** One record of a store on the device; null where there is none. */
export async function recordKept(
  device: BrowserContext,
  address: string,
  store: keyof Kept,
  record: string,
): Promise<unknown> {
  const page = device.pages().find((one) => one.url().startsWith(address));
  if (page === undefined) throw new Error("no page of the app is open");
  const found = await page.evaluate(
    ([name, key]) =>
      new Promise<unknown>((resolve) => {
        const asked = indexedDB.open("thrum-at-the-loom", 1);
        asked.onsuccess = () => {
          const got = asked.result.transaction(name).objectStore(name).get(key);
          got.onsuccess = () => {
            asked.result.close();
            resolve(got.result ?? null);
          };
        };
      }),
    [store, record] as const,
  );
  return found;
}
