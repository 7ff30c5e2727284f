import type { PlanData } from "@thrum/plan";
import { shallowRef } from "vue";
import type { ToldFault } from "./plan-views.js";
import type { Views } from "./views.js";
import type { Reply } from "./worker.js";

type Answer<K extends keyof Views> = Awaited<ReturnType<Views[K]>>;

interface Waiting {
  readonly give: (answer: unknown) => void;
  readonly refuse: (error: Error) => void;
}

/** A part of the app has not arrived. */
export const isCut = shallowRef(false);

const waiting = new Map<number, Waiting>();
let worker: Worker | undefined;
let last = 0;

function started(): Worker {
  if (worker !== undefined) return worker;
  worker = new Worker(new URL("./worker.ts", import.meta.url), { type: "module" });
  worker.addEventListener("message", ({ data }: MessageEvent<Reply>) => {
    const asked = waiting.get(data.id);
    waiting.delete(data.id);
    if (data.ok) asked?.give(data.answer);
    else asked?.refuse(new Error(data.says));
  });
  worker.addEventListener("error", ({ message }: Partial<ErrorEvent>) => {
    // A worker that could not be fetched says nothing.
    isCut.value ||= message === undefined || message === "";
    for (const { refuse } of waiting.values()) refuse(new Error(message ?? "the worker did not arrive"));
    waiting.clear();
    worker = undefined;
  });
  return worker;
}

/** Asks the worker, which alone reckons, for one of its views. */
export function ask<K extends keyof Views>(view: K, ...given: Parameters<Views[K]>): Promise<Answer<K>> {
  const id = ++last;
  return new Promise((resolve, reject) => {
    waiting.set(id, {
      give: (answer) => {
        resolve(answer as Answer<K>);
      },
      refuse: reject,
    });
    // What Vue watches is no plain data: a copy is.
    started().postMessage({ id, view, given: JSON.parse(JSON.stringify(given)) as unknown });
  });
}

/** Why a text is no job: every fault with its place. */
export class Unread extends Error {
  constructor(readonly faults: readonly ToldFault[]) {
    super(faults.map(({ says }) => says).join("\n"));
  }
}

/** The plan of a job file, as data. */
export async function planOf(text: string): Promise<PlanData> {
  const reckoned = await ask("reckoned", text);
  if (!reckoned.ok) throw new Unread(reckoned.faults);
  return reckoned.plan;
}
