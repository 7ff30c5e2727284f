import { check } from "../refusal/check.js";
import { fields, listOf, oneOf, someEnds, whole } from "../refusal/kinds.js";
import { reverse } from "../sequence/reverse.js";
import type { Chain } from "./chains.js";

export interface LayingListInput<C> {
  /** As they were wound. */
  readonly chains: readonly Chain<C>[];
  /** Side of the loom where end 1 lies, seen from the front. */
  readonly endOneOn: "left" | "right";
  /** Where the knots are tied decides which way the weaver faces, or lets the weaver choose. */
  readonly knotsTied: "in front of the reed" | "behind the reed" | "behind the heddles";
  readonly weaverFaces: "back of the loom" | "front of the loom";
}

export interface LaidChain<C> extends Chain<C> {
  /** Place from the weaver's left, from 1. */
  readonly place: number;
  /** Whether the first end of the chain lies to the weaver's left or right. */
  readonly firstEndOn: "left" | "right";
}

/**
 * The chains as they lie before the weaver at the loom, from left to right, their stripes in that order too.
 *
 * @throws StripeError for a weaver who would face away from the knots
 * @example
 * const warp = sequence([{ colour: "ash", ends: 24 }, { colour: "madder", ends: 72 }, { colour: "ash", ends: 24 }]);
 * const cut = chains({ sequence: warp, most: 60, cutAt: 2 });
 * const seat = { knotsTied: "in front of the reed", weaverFaces: "back of the loom" };
 * layingList({ chains: cut, endOneOn: "right", ...seat }).map(({ number }) => number) // [2, 1]
 */
export function layingList<C>(input: LayingListInput<C>): readonly LaidChain<C>[] {
  check("layingList", input, {
    chains: listOf(1, fields({ number: whole(1), firstEnd: whole(1), lastEnd: whole(1), sequence: someEnds })),
    endOneOn: oneOf("left", "right"),
    knotsTied: oneOf("in front of the reed", "behind the reed", "behind the heddles"),
    weaverFaces: oneOf("back of the loom", "front of the loom"),
  });
  const facing = {
    "in front of the reed": "back of the loom",
    "behind the reed": null,
    "behind the heddles": "front of the loom",
  };
  const needed = facing[input.knotsTied];
  if (needed !== null) check("layingList", { weaverFaces: input.weaverFaces }, { weaverFaces: oneOf(needed) });
  // Seen from behind, left and right change places.
  const firstEndOn = (input.endOneOn === "left") === (input.weaverFaces === "back of the loom") ? "left" : "right";
  const laid = firstEndOn === "left" ? input.chains : [...input.chains].reverse();
  return laid.map((chain, index) => ({
    ...chain,
    sequence: firstEndOn === "left" ? chain.sequence : reverse(chain.sequence),
    place: index + 1,
    firstEndOn,
  }));
}
