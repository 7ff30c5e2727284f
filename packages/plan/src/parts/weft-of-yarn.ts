import type { Hand, Runs } from "../job/runs.js";
import type { Shots } from "../job/weft.js";
import type { LaidShots } from "./laid-shots.js";

/** A weft that is one run all over. */
function alone(runs: Runs<Shots>): Hand | null {
  const [one] = runs;
  const isAlone =
    runs.length === 1 && one !== undefined && "yarns" in one && one.picks === undefined && one.length === undefined;
  return isAlone ? one : null;
}

/** How a piece is woven. */
export function weftKind({ runs }: { readonly runs: Runs<Shots> }): "plain" | "by turns" | "striped" {
  const hand = alone(runs);
  if (hand === null) return "striped";
  return hand.yarns.length === 1 ? "plain" : "by turns";
}

function times(yarns: readonly string[], yarn: string): number {
  return yarns.filter((one) => one === yarn).length;
}

/** Of one yarn, in one round of shots. */
export function threadsInRound(given: { readonly runs: Runs<Shots>; readonly yarn: string }): number {
  return times(alone(given.runs)?.yarns ?? [], given.yarn);
}

/** Shots of one round: all yarns lie in one, or each in its own. */
export function shotsInRound({ runs }: { readonly runs: Runs<Shots> }): number {
  const hand = alone(runs);
  return hand?.order === undefined ? 1 : hand.yarns.length;
}

interface OfYarn {
  readonly laid: readonly LaidShots[];
  readonly yarn: string;
}

/** Picks of one yarn: each thread of a shot one, shots in turn begun anew in every stripe. */
export function picksOfYarn({ laid, yarn }: OfYarn): number {
  return laid.reduce((so, { yarns, order, picks }) => {
    if (order === undefined) return so + picks * times(yarns, yarn);
    const whole = Math.floor(picks / yarns.length);
    return so + whole * times(yarns, yarn) + times(yarns.slice(0, picks % yarns.length), yarn);
  }, 0);
}

/** Stripes that have the yarn. */
export function stripesOfYarn({ laid, yarn }: OfYarn): number {
  return laid.filter(({ yarns, picks }) => picks > 0 && yarns.includes(yarn)).length;
}
