import { listOf, readInputs, whole } from "../../engine/formula/index.js";
import { frozen } from "../../engine/frozen.js";
import { refuse } from "../../engine/refusal.js";
import { dentOf } from "./dent-of-end.js";

export interface StripeEdgesInDentsInput {
  /** In the warp. */
  readonly ends: number;
  /** The number of the last end of every stripe, counted from end 1. */
  readonly edges: readonly number[];
  /** The sleying order, over and over from end 1; 0 is an empty dent. */
  readonly endsInEachDent: readonly number[];
}

/** Where a stripe ends among the dents. */
export interface StripeEdge {
  readonly edge: number;
  /** The dent of the edge's end, counted from the dent of end 1, empty ones among them. */
  readonly dent: number;
  /** Its place among the ends of that dent. */
  readonly place: number;
  readonly endsInDent: number;
  /** Whether the dent holds ends of two stripes. */
  readonly cutsDent: boolean;
}

/**
 * For every stripe the dent in which it ends, and whether that dent holds ends of the next stripe too.
 *
 * @param input the ends of the warp, the last end of every stripe, and the sleying order
 * @returns one for each edge but that of the warp itself
 * @source common practice
 * @example stripeEdgesInDents({ ends: 40, edges: [15, 40], endsInEachDent: [2] })[0].cutsDent // true
 */
export function stripeEdgesInDents(input: StripeEdgesInDentsInput): readonly StripeEdge[] {
  const declared = {
    ends: whole("ends", "in the warp", { atLeast: 1 }),
    edges: listOf(whole("ends", "up to and with the last of a stripe", { atLeast: 1 })),
    endsInEachDent: listOf(whole("ends in each dent", "of the sleying order", { atLeast: 0 })),
  };
  const name = "stripeEdgesInDents";
  readInputs(name, declared, input);
  const { ends, edges, endsInEachDent } = input;
  const endsInOrder = endsInEachDent.reduce((total, held) => total + held, 0);
  if (endsInOrder === 0)
    refuse("out-of-range", [name, "endsInEachDent"], "a dent with an end in it", "only empty dents");
  const outside = edges.find((edge) => edge > ends);
  if (outside !== undefined)
    refuse("out-of-range", [name, "edges"], `no edge past the last of ${String(ends)} ends`, `edge ${String(outside)}`);
  return frozen(
    edges
      .filter((edge) => edge !== ends)
      .map((edge) => {
        const [dent, place] = dentOf(edge, endsInEachDent, endsInOrder);
        const endsInDent = endsInEachDent[(dent - 1) % endsInEachDent.length] ?? 0;
        return { edge, dent, place, endsInDent, cutsDent: place < endsInDent };
      }),
  );
}
