import type { CrossFault } from "./cross-faults.js";
import type { Job } from "./job.js";
import type { Threaded } from "./loom.js";
import type { WarpFault } from "./old-warp.js";
import { isMirrored, isRepeated } from "./runs.js";
import type { Runs } from "./runs.js";

type Fact = Pick<CrossFault, "code" | "expected" | "received" | "remedy">;

/** The highest shaft of a threading. */
function highest(list: Runs<Threaded>): number {
  const shafts = list.map((run) => {
    if (isRepeated(run)) return highest(run.of);
    if (isMirrored(run)) return highest(run.mirror);
    return typeof run === "number" ? run : run === "floating" ? 0 : run.shaft;
  });
  return Math.max(0, ...shafts);
}

/** Shafts the loom is known to have; undefined where nothing says it. */
function shaftsOf({ loom }: Job): number | undefined {
  const hung = [loom?.room?.before?.heddles, loom?.room?.after?.heddles].map((heddles) =>
    typeof heddles === "object" ? heddles.length : 0,
  );
  return loom?.threading === undefined ? undefined : Math.max(highest(loom.threading), ...hung);
}

/** Dents the reed is known to have from end 1's on: those of a bare number for all the threads, and those still empty. */
function dentsOf({ loom, oldWarp }: Job): number | undefined {
  const [each, more] = loom?.sley?.places ?? [];
  const empty = loom?.room?.after?.dents;
  if (typeof each !== "number" || more !== undefined || empty === undefined || oldWarp?.ends === undefined)
    return undefined;
  const left = (oldWarp.faults ?? []).reduce((sum, fault) => sum + (fault.is === "broken" ? (fault.ends ?? 1) : 0), 0);
  return Math.ceil((oldWarp.ends + left) / each) + empty;
}

function beyond(fault: WarpFault, ends: number | undefined): Fact | null {
  const [key, at] = "end" in fault ? ["end", fault.end] : ["after", fault.after];
  if (ends === undefined || at <= ends) return null;
  return {
    code: "out-of-range",
    expected: `${key} of at most ${String(ends)}, the last thread`,
    received: String(at),
    remedy: "Ends are numbered as they were counted.",
  };
}

function elsewhere(noun: string, number: number | undefined, there: number | undefined): Fact | null {
  if (number === undefined || there === undefined || number <= there) return null;
  return {
    code: "out-of-range",
    expected: `one of the ${String(there)} ${noun}s of the loom`,
    received: `${noun} ${String(number)}`,
    remedy: `Look at the ${noun} again.`,
  };
}

/** Faults of the old warp that no loom can have. */
export function placeFaults(job: Job): readonly CrossFault[] {
  const { oldWarp } = job;
  const faults = oldWarp?.faults ?? [];
  const shafts = shaftsOf(job);
  const dents = dentsOf(job);
  const seen = new Set<number>();
  return faults.flatMap((fault, index) => {
    const path = ["oldWarp", "faults", index];
    const twice = "end" in fault && seen.has(fault.end);
    if ("end" in fault) seen.add(fault.end);
    const again: Fact | null = twice
      ? {
          code: "ambiguous",
          expected: "one fault of each thread",
          received: `a second of end ${String(fault.end)}`,
          remedy: "Keep the one that is there.",
        }
      : null;
    const facts: readonly (Fact | null)[] = [
      beyond(fault, oldWarp?.ends),
      again,
      elsewhere("shaft", "shaft" in fault ? fault.shaft : undefined, shafts),
      elsewhere("dent", "dent" in fault ? fault.dent : undefined, dents),
    ];
    return facts.flatMap((fact) => (fact === null ? [] : [{ ...fact, path, params: {} }]));
  });
}
