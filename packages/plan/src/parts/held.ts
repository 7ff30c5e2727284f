import type { Length, Mass } from "@thrum/maths";
import type { OnHand } from "../job/yarns.js";

/** What is there of a yarn, by how it was told. */
export interface Held {
  readonly masses: readonly Mass[];
  readonly lengths: readonly Length[];
  /** Packages, part ones as parts. */
  readonly packages: readonly number[];
}

export function heldInParts({ onHand }: { readonly onHand: OnHand }): Held {
  return {
    masses: onHand.flatMap((part) => ("mass" in part ? [part.mass] : [])),
    lengths: onHand.flatMap((part) => ("length" in part ? [part.length] : [])),
    packages: onHand.flatMap((part) => ("packages" in part ? [part.packages] : [])),
  };
}
