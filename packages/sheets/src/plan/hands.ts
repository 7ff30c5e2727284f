import type { PlanData } from "@thrum/plan";

export type LaidStripe = NonNullable<PlanData["figures"]["loom"]["stripes"]["value"]>["runs"][number];

/** Threads that are held together, of which stripes are made. */
export interface Hand {
  /** As the job writes it: `plum + plum + pink`. */
  readonly text: string;
  readonly yarns: readonly string[];
}

/** How a hand is written: together, or strictly in turn. */
export function handText({ yarns, order }: LaidStripe): string {
  return yarns.join(order === undefined ? " + " : " / ");
}

/** The hands of the stripes, each once, in the order met. */
export function handsOf(runs: readonly LaidStripe[]): readonly Hand[] {
  return [...new Map(runs.map((run) => [handText(run), { text: handText(run), yarns: run.yarns }])).values()];
}
