import type { BesideTheWarp } from "../job/job.js";

interface Woven {
  readonly ends: number;
  readonly yarns: readonly string[];
}

/** Ends of one yarn in the stripes; of a blend its share of every hand. */
export function endsOfYarn(given: { readonly runs: readonly Woven[]; readonly name: string }): number {
  return given.runs.reduce((so, { ends, yarns }) => {
    const times = yarns.filter((yarn) => yarn === given.name).length;
    return so + (ends / yarns.length) * times;
  }, 0);
}

/** Ends of one yarn wound beside the warp. */
export function endsBeside(given: { readonly extra: readonly BesideTheWarp[]; readonly name: string }): number {
  return given.extra.reduce((so, { ends, yarn }) => so + (yarn === given.name ? ends : 0), 0);
}
