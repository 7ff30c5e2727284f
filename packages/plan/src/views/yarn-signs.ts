import type { PlanData } from "../data/plan-data.js";
import { HATCHES, signsOf } from "./signs.js";

/** How a yarn is told from the others on paper and screen, with colour or without. */
export interface YarnSign {
  readonly name: string;
  readonly letter: string;
  /** Its hatch as the path of an SVG, in a tile of 8 by 8; nothing where it is white. */
  readonly hatch: string;
  /** Its colour on a screen, where the job says it. */
  readonly seen: string | null;
}

/**
 * The letters and hatches of the printed sheets, so that a screen shows the same.
 *
 * @param plan a plan, or a copy of one
 * @returns one for each yarn, in the order of the sheets
 */
export function yarnSigns({ job, figures }: PlanData): readonly YarnSign[] {
  const names = Object.keys(figures.yarn);
  return [...signsOf(names, job)].map(([name, { letter, hatch }]) => ({
    name,
    letter,
    hatch: HATCHES.find((one) => one.name === hatch)?.lines ?? "",
    seen: Object.entries(job.yarns ?? {}).find(([yarn]) => yarn === name)?.[1].seen ?? null,
  }));
}
