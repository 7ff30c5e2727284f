import type { OddCount, Progress } from "./progress.js";
import { miscountSaid } from "./miscount-said.js";
import { isTicked } from "./ticks.js";

/** A group as the rule needs it: how many ends, and the number of its stripe. */
export interface GroupInStripe {
  readonly ends: number;
  readonly stripe: number;
  /** Threads of the old warp counted with it, where they are not as many as its ends. */
  readonly oldThreads?: number;
}

export interface Suspect {
  readonly group: number;
  readonly firstEnd: number;
  readonly lastEnd: number;
}

/** Where a miscount lies that shows at the edge of a stripe. */
export interface Miscount {
  readonly group: number;
  /** Ends seen there; of two that are left over, one of each, tying goes on. */
  readonly seen: { readonly old: number; readonly new: number };
  readonly lookFor: "a bare old end" | "a loose new end" | "tie on";
  readonly means: readonly string[];
  /** Groups counted odd, which come first: how many more or fewer than planned. */
  readonly odd: readonly (Suspect & { readonly old: number; readonly new: number })[];
  /** Where it may lie, from the edge back to the last that agreed; groups whose both counts were right are left out. */
  readonly among: readonly Suspect[];
  /** What it means, and what to look for. */
  readonly says: string;
  /** What agreed before it, and how much may be untied; empty where tying goes on. */
  readonly untie: string;
}

const NEW_LEFT = ["an old end was passed over", "two old ends lie in one knot", "the chain holds one too many"];
const OLD_LEFT = ["a new end was passed over", "two new ends lie in one knot", "the chain is short"];

export type TyingOrder = "from end 1" | "from the last end" | "one colour at a time";

function placed(groups: readonly GroupInStripe[]): readonly (Suspect & GroupInStripe)[] {
  let last = 0;
  return groups.map((group, at) => {
    last += group.ends;
    return { ...group, group: at + 1, firstEnd: last - group.ends + 1, lastEnd: last };
  });
}

/** The groups from the edge back to the last edge that agreed. */
function sinceAgreed(
  all: readonly (Suspect & GroupInStripe)[],
  stripe: number,
  odd: ReadonlySet<number>,
  order: TyingOrder,
): readonly (Suspect & GroupInStripe)[] {
  const back = order === "from the last end" ? 1 : -1;
  let reach = stripe;
  const last = all.at(-1)?.stripe ?? stripe;
  const disagreed = (next: number): boolean => next >= (all[0]?.stripe ?? next) && next <= last && odd.has(next);
  while (order !== "one colour at a time" && disagreed(reach + back)) reach += back;
  const [low, high] = [Math.min(stripe, reach), Math.max(stripe, reach)];
  return all.filter((one) => one.stripe >= low && one.stripe <= high);
}

/**
 * Where the miscounts lie that were seen at the edges of stripes: after the last edge that agreed.
 *
 * @param progress what was counted and what was left over
 * @param groups the groups as they are planned, from end 1
 * @param order the order of tying
 */
export function miscounts(
  progress: Progress,
  groups: readonly GroupInStripe[],
  order: TyingOrder,
): readonly Miscount[] {
  const all = placed(groups);
  const { counted, leftOver = [] } = progress;
  const odds = new Map((counted?.odd ?? []).map((one): [number, OddCount] => [one.group, one]));
  const stripeOf = (group: number): number => all[group - 1]?.stripe ?? 0;
  const disagreed = leftOver.filter((one) => (one.old ?? 0) + (one.new ?? 0) > 0);
  const stripes = new Set(disagreed.map(({ group }) => stripeOf(group)));
  const wasRight = (group: number): boolean =>
    isTicked(counted?.old, group) && isTicked(counted?.new, group) && !odds.has(group);
  return disagreed.map((left): Miscount => {
    const seen = { old: left.old ?? 0, new: left.new ?? 0 };
    const since = sinceAgreed(all, stripeOf(left.group), stripes, order);
    const odd = since.flatMap(({ group, firstEnd, lastEnd, ends, oldThreads = ends }) => {
      const one = odds.get(group);
      return one === undefined
        ? []
        : [{ group, firstEnd, lastEnd, old: (one.old ?? oldThreads) - oldThreads, new: (one.new ?? ends) - ends }];
    });
    const among = since
      .filter(({ group }) => !wasRight(group))
      .map(({ group, firstEnd, lastEnd }) => ({ group, firstEnd, lastEnd }));
    const lookFor = seen.old > 0 && seen.new > 0 ? "tie on" : seen.new > 0 ? "a bare old end" : "a loose new end";
    const means = lookFor === "tie on" ? [] : seen.new > 0 ? NEW_LEFT : OLD_LEFT;
    return {
      group: left.group,
      seen,
      lookFor,
      means,
      odd,
      among,
      ...miscountSaid({ seen, lookFor, means, odd, since }, order),
    };
  });
}
