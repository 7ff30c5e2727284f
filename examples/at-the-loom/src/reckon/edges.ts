import { planFrom } from "@thrum/plan";
import type { PlanData } from "@thrum/plan";
import { yarnsOf } from "./looks.js";
import type { Yarn } from "../parts/yarn.js";

/** Where a stripe ends on the old warp, with the threads beside it. */
export interface Edge {
  readonly end: number;
  readonly shaft: string;
  readonly dent: number | null;
  readonly cutsDent: boolean;
  readonly cutsRepeat: boolean;
  readonly yarns: readonly string[];
  readonly threads: readonly Thread[];
}

export interface Thread {
  readonly end: number;
  readonly shaft: string;
  readonly dent: number | null;
  readonly old: boolean;
  readonly yarn: Yarn | null;
}

const BESIDE = 6;

/** Every edge, those inside a repeat or a dent first. */
export function edgesOf(data: PlanData): readonly Edge[] {
  const plan = planFrom(data);
  const groups = plan.figures.tying.onLoom.value ?? [];
  const runs = plan.figures.loom.stripes.value?.runs ?? [];
  const shafts = plan.figures.loom.shafts.value?.shafts ?? [];
  const dents = plan.figures.loom.dentOf.value?.dents ?? [];
  const looks = new Map(yarnsOf(plan).map((yarn) => [yarn.name, yarn]));
  const ends = runs.flatMap(({ yarns, ends: number }) =>
    Array.from({ length: number }, (_, at) => yarns[at % yarns.length] ?? ""),
  );
  const isTied = plan.job.oldWarp?.ends !== undefined;
  const edges: Edge[] = [];
  let last = 0;
  for (const run of runs.slice(0, -1)) {
    last += run.ends;
    const group = groups.find((one) => one.lastEnd === last);
    const from = Math.max(1, last - BESIDE + 1);
    const to = Math.min(ends.length, last + BESIDE);
    const threads = Array.from({ length: to - from + 1 }, (_, at): Thread => {
      const end = from + at;
      return {
        end,
        shaft: String(shafts[end - 1] ?? ""),
        dent: dents[end - 1] ?? null,
        old: isTied,
        yarn: looks.get(ends[end - 1] ?? "") ?? null,
      };
    });
    edges.push({
      end: last,
      shaft: String(shafts[last - 1] ?? ""),
      dent: dents[last - 1] ?? null,
      cutsDent: group?.cutsDent === true,
      cutsRepeat: group?.cutsRepeat === true,
      yarns: run.yarns,
      threads,
    });
  }
  const rank = ({ cutsDent, cutsRepeat }: Edge): number => (cutsRepeat ? 0 : cutsDent ? 1 : 2);
  return edges.sort((one, other) => rank(one) - rank(other) || one.end - other.end);
}
