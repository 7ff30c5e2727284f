import type { Progress } from "@thrum/plan";
import type { Task, WorkRecord } from "./records.js";

/** The place in the work as the address carries it where nothing can be kept: `tie.9.0`. */
export function placeText({ here, progress }: WorkRecord): string {
  const ticked = (ticks: Progress["tied"]): number | "all" => (ticks === "all" ? "all" : (ticks?.at(-1)?.to ?? 0));
  const { winding, wound } = progress;
  const parts: Partial<Record<Task, readonly (number | string)[]>> = {
    count: [ticked(progress.counted?.old)],
    wind: [ticked(wound), winding?.stripe ?? 0, winding?.pass ?? 0],
    tie: [ticked(progress.tied), progress.stopped?.knot ?? 0],
    tape: [progress.woven ?? 0],
  };
  return [here.task, ...(parts[here.task] ?? [])].join(".");
}

/** The work at that place; what the address does not carry stays as it was. */
export function placed(fresh: WorkRecord, at: string | null): WorkRecord {
  const [task = "", first = "0", second = "0", third = "0"] = (at ?? "").split(".");
  const upTo = first === "all" ? ("all" as const) : Number(first) > 0 ? [{ from: 1, to: Number(first) }] : [];
  const from = (task: Task, progress: Partial<Progress>): WorkRecord => ({
    ...fresh,
    seq: Math.max(1, fresh.seq),
    here: { ...fresh.here, task },
    progress: { ...fresh.progress, ...progress },
  });
  if (!/^(?:all|\d{1,5})$/u.test(first) || !/^\d{1,5}$/u.test(second) || !/^\d{1,5}$/u.test(third)) return fresh;
  switch (task) {
    case "count":
      return from(task, { counted: { ...fresh.progress.counted, old: upTo } });
    case "wind": {
      const winding = { chain: Number(first) + 1, stripe: Number(second), pass: Number(third) };
      return from(task, { wound: upTo, ...(Number(second) > 0 ? { winding } : {}) });
    }
    case "tie": {
      const stopped = { group: Number(first) + 1, knot: Number(second) };
      return from(task, { tied: upTo, ...(Number(second) > 0 ? { stopped } : {}) });
    }
    case "tape":
      return from(task, { woven: Number(first) });
    default:
      return fresh;
  }
}
