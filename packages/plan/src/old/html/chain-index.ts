import type { TyingGroup } from "../plan/groups.js";
import type { WarpPlan } from "../plan/warp-plan.js";

/** Ends that lie side by side and are tied in one go, and how many are passed over to come to them. */
export interface Span {
  readonly passOver: number;
  readonly firstEnd: number;
  readonly lastEnd: number;
  readonly ends: number;
}

/** The spans of one colour, in the order they are tied. */
export function spansOf(colour: string, groups: readonly TyingGroup[]): readonly Span[] {
  const spans: Span[] = [];
  for (const { firstEnd, lastEnd } of groups.filter((group) => group.colour === colour)) {
    const last = spans.at(-1);
    if (last?.lastEnd === firstEnd - 1) {
      spans[spans.length - 1] = { ...last, lastEnd, ends: last.ends + lastEnd - firstEnd + 1 };
    } else {
      spans.push({ passOver: firstEnd - 1 - (last?.lastEnd ?? 0), firstEnd, lastEnd, ends: lastEnd - firstEnd + 1 });
    }
  }
  return spans;
}

/** A chain with the groups of the joining pages in which its ends are tied. */
export interface ChainGroups {
  readonly chain: number;
  readonly firstEnd: number;
  readonly lastEnd: number;
  readonly ends: number;
  readonly firstGroup: number;
  readonly lastGroup: number;
}

/** Which ends, and which groups, each chain takes. */
export function chainGroups({ winding, groups }: WarpPlan): readonly ChainGroups[] {
  return winding.map(({ chain, firstEnd, lastEnd, ends }) => {
    const own = groups.filter((group) => group.lastEnd >= firstEnd && group.firstEnd <= lastEnd);
    const [firstGroup, lastGroup] = [own[0]?.group ?? 0, own.at(-1)?.group ?? 0];
    return { chain, firstEnd, lastEnd, ends, firstGroup, lastGroup };
  });
}
