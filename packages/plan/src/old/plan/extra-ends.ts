import type { Length } from "@thrum/maths";
import type { JobExtraEnds } from "../job/beside-the-warp.js";
import type { Job } from "../job/job.js";

/** Ends of one yarn wound beside the warp: they are not joined and are no ends of the warp. */
export interface ExtraEnds {
  readonly use: keyof JobExtraEnds;
  readonly yarn: string;
  readonly ends: number;
  /** Of each of them: that of the warp. */
  readonly length: Length;
}

/** What is wound beside the warp, the sample first. */
export function extraEnds({ extraEnds: extra }: Job, length: Length): readonly ExtraEnds[] {
  const uses = ["sample", "repairs"] as const;
  return uses.flatMap((use) => Object.entries(extra?.[use] ?? {}).map(([yarn, ends]) => ({ use, yarn, ends, length })));
}

/** The ends of one yarn among them. */
export function extraOf(name: string, extra: readonly ExtraEnds[]): number {
  return extra.reduce((sum, { yarn, ends }) => (yarn === name ? sum + ends : sum), 0);
}
