import { colourDifference, labOf } from "@thrum/stripes";
import type { Hand } from "../job/runs.js";
import type { LaidStripe } from "./laid-stripes.js";
import { firstSix } from "./told.js";
import type { Told } from "./told.js";

/** Two yarns that lie side by side at an edge somewhere in the warp. */
export interface Neighbours {
  readonly yarns: readonly [string, string];
  /** The last end of the stripe before each edge where they meet, or where a blend may let them meet. */
  readonly edges: readonly number[];
  /** By CIEDE2000; null where the job does not say what both look like. */
  readonly difference: number | null;
}

/** The yarns that may stand at one side of a hand: of a blend each of them. */
function atSide({ yarns, order }: Hand, side: "first" | "last"): readonly string[] {
  if (order === undefined) return [...new Set(yarns)];
  return side === "first" ? yarns.slice(0, 1) : yarns.slice(-1);
}

function differenceOf(one: string, other: string, seen: Readonly<Record<string, string>>): number | null {
  const [of, and] = [one, other].map((yarn) => (Object.hasOwn(seen, yarn) ? seen[yarn] : undefined));
  return of === undefined || and === undefined ? null : colourDifference({ one: labOf(of), other: labOf(and) });
}

/** Each two yarns once that meet at an edge, the least different first, those not judged last. */
export function neighboursOf(
  stripes: readonly LaidStripe[],
  seen: Readonly<Record<string, string>>,
): readonly Neighbours[] {
  const met = new Map<string, Neighbours>();
  stripes.forEach((stripe, at) => {
    const before = stripes[at - 1];
    if (before === undefined) return;
    for (const one of atSide(before, "last"))
      for (const other of atSide(stripe, "first")) {
        if (one === other) continue;
        const key = JSON.stringify(one < other ? [one, other] : [other, one]);
        const known = met.get(key) ?? { yarns: [one, other], edges: [], difference: differenceOf(one, other, seen) };
        met.set(key, { ...known, edges: [...known.edges, before.lastEnd] });
      }
  });
  const rank = ({ difference }: Neighbours): number => difference ?? Infinity;
  return [...met.values()].sort((one, other) => (rank(one) < rank(other) ? -1 : rank(one) > rank(other) ? 1 : 0));
}

/** Where two colours begin to look alike on a screen, by CIEDE2000: common practice, no source; threads in a shed look nearer still. */
const LEAST = 10;

/** Neighbours less different than that: while winding, a thread of another colour marks the edges where they meet. */
export function hardToTellApart(neighbours: readonly Neighbours[], least: number = LEAST): readonly Told[] {
  return neighbours.flatMap(({ yarns, edges, difference }): readonly Told[] => {
    if (difference === null || difference >= least) return [];
    const says = `${yarns[0]} beside ${yarns[1]}: they differ by ${difference.toFixed(1)} (CIEDE2000), less than ${String(least)}, and are hard to tell apart. While you wind, tie a thread of another colour round the last end before each edge where they meet: end ${firstSix(edges)}.`;
    return [{ standing: "check", about: "neighbours", says, values: { yarns, edges, difference, least } }];
  });
}
