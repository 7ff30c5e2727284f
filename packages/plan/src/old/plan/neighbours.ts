import type { Sequence } from "@thrum/stripes";
import type { JobColoursSeen } from "../job/beside-the-warp.js";
import { colourDifference } from "../../parts/colour-difference.js";
import { labOf } from "../../parts/screen-colour.js";

/** Two colours that lie side by side somewhere in the warp. */
export interface Neighbours {
  readonly colours: readonly [string, string];
  /** The last end of the stripe before each edge where they meet. */
  readonly edges: readonly number[];
  /** By CIEDE2000; null where the job does not say what both look like. */
  readonly difference: number | null;
  readonly leastDifference: number;
  readonly standing: "check";
  /** Whether they are told apart, or are not judged. */
  readonly agrees: boolean;
  readonly says: string;
}

type Met = Pick<Neighbours, "colours" | "edges">;

/** Each two colours once, whichever of them comes first, with every edge where they meet. */
function meetings({ runs, starts }: Sequence<string>): readonly Met[] {
  const met = new Map<string, Met>();
  for (const [at, { colour }] of runs.slice(1).entries()) {
    const before = runs[at]?.colour ?? "";
    const key = JSON.stringify(before < colour ? [before, colour] : [colour, before]);
    const edge = (starts[at + 1] ?? 1) - 1;
    const known = met.get(key);
    met.set(key, { colours: known?.colours ?? [before, colour], edges: [...(known?.edges ?? []), edge] });
  }
  return [...met.values()];
}

function judged({ colours, edges }: Met, { leastDifference, colours: seen }: JobColoursSeen): Neighbours {
  const [one, other] = colours.map((colour) => (Object.hasOwn(seen, colour) ? seen[colour] : undefined));
  const isSeen = one !== undefined && other !== undefined;
  const difference = isSeen ? colourDifference(labOf(one), labOf(other)) : null;
  const agrees = difference === null || difference >= leastDifference;
  const standing = "check" as const;
  const pair = `${colours[0]} beside ${colours[1]}`;
  const says =
    difference === null
      ? `${pair}: not judged, for the job does not say what both look like on a screen.`
      : agrees
        ? `${pair}: they differ by ${difference.toFixed(1)} (CIEDE2000), ${String(leastDifference)} asked for.`
        : `${pair}: they differ by ${difference.toFixed(1)} (CIEDE2000), less than the ${String(leastDifference)} asked for, and are hard to tell apart. While you wind, tie a thread of a contrasting colour round the last end before each edge where they meet: end ${edges.join(", ")}.`;
  return { colours, edges, difference, leastDifference, standing, agrees, says };
}

/** The colours that lie side by side, held against the difference the weaver asks for. */
export function neighboursOf(warp: Sequence<string>, seen: JobColoursSeen | undefined): readonly Neighbours[] {
  return seen === undefined ? [] : meetings(warp).map((one) => judged(one, seen));
}
