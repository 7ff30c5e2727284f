import { isTicked, knotsTied } from "@thrum/plan";
import type { Task, WorkRecord } from "../keep/records.js";
import { loom as words } from "../words/loom.js";
import { whenText } from "./stopped.js";

/** How far the open task is, by the record alone: the shelf plans no warp to say it. */
function howFar({ here, progress }: WorkRecord): string {
  const { groups = [], chains = [], counted, wound, woven = 0 } = progress;
  const ticked = (ticks: typeof wound, many: number): number =>
    Array.from({ length: many }, (_, at) => at + 1).filter((one) => isTicked(ticks, one)).length;
  const ends = groups.reduce((sum, one) => sum + one.ends, 0);
  const said: Partial<Record<Task, string>> = {
    tie: words.howFar.tie(knotsTied(progress, groups), ends),
    count: words.howFar.count(ticked(counted?.old, groups.length), groups.length),
    wind: words.howFar.wind(ticked(wound, chains.length), chains.length),
    tape: words.howFar.tape(woven),
  };
  return said[here.task] ?? "";
}

/** Where a warp stands, in one sentence. */
export function shelfSentence(work: WorkRecord, now: number, locale: string): string {
  return words.where(work.here.task, whenText(work.at, now, locale), howFar(work));
}
