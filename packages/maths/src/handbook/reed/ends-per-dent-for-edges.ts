import { listOf, readInputs, whole } from "../../engine/formula/index.js";
import { frozen } from "../../engine/frozen.js";
import { stripeEdgesInDents } from "./stripe-edges-in-dents.js";

export interface EndsPerDentForEdgesInput {
  /** In the warp. */
  readonly ends: number;
  /** The number of the last end of every stripe, counted from end 1. */
  readonly edges: readonly number[];
  /** One is ready to sley. */
  readonly mostPerDent: number;
}

/** One number of ends in every dent, and the stripe edges that fall inside a dent with it. */
export interface EndsPerDentForEdges {
  readonly endsPerDent: number;
  readonly edgesInsideDents: readonly number[];
}

/**
 * For every number of ends in a dent the stripe edges it would put inside a dent; an empty list keeps them all between dents.
 *
 * @param input the ends of the warp, the last end of every stripe, and the most ends one is ready to put in a dent
 * @returns from one end in a dent upwards
 * @source common practice
 * @example endsPerDentForEdges({ ends: 48, edges: [12, 30, 48], mostPerDent: 4 })[3].edgesInsideDents // [30]
 */
export function endsPerDentForEdges(input: EndsPerDentForEdgesInput): readonly EndsPerDentForEdges[] {
  const declared = {
    ends: whole("ends", "in the warp", { atLeast: 1 }),
    edges: listOf(whole("ends", "up to and with the last of a stripe", { atLeast: 1 })),
    mostPerDent: whole("ends in each dent", "at the most", { atLeast: 1, atMost: 100 }),
  };
  readInputs("endsPerDentForEdges", declared, input);
  const { ends, edges, mostPerDent } = input;
  return frozen(
    Array.from({ length: mostPerDent }, (_, at) => {
      const found = stripeEdgesInDents({ ends, edges, endsInEachDent: [at + 1] });
      const edgesInsideDents = found.filter(({ cutsDent }) => cutsDent).map(({ edge }) => edge);
      return { endsPerDent: at + 1, edgesInsideDents };
    }),
  );
}
