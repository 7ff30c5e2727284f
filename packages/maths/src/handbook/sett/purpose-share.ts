import { oneOf, readInputs } from "../../engine/formula/index.js";
import type { Source } from "../../engine/formula/index.js";
import { osterkampSettRevisited, settSinglePage } from "../../sources/index.js";
import { percentOf } from "../../units/index.js";
import type { Share } from "../../units/index.js";

/** A share of the closest sett, from so much to so much, as one source gives it. */
export interface PurposeShare {
  readonly from: Share;
  readonly to: Share;
  readonly source: Source;
}

type Purpose = "ordinary" | "upholstery" | "delicate" | "good working sett";

const published: Readonly<Record<Purpose, readonly [from: number, to: number, source: Source]>> = {
  ordinary: [80, 80, osterkampSettRevisited],
  upholstery: [90, 90, osterkampSettRevisited],
  delicate: [50, 60, osterkampSettRevisited],
  "good working sett": [75, 75, settSinglePage],
};

export interface PurposeShareOf {
  /** What the cloth is to do. */
  readonly purpose: Purpose;
}

/**
 * The share of the closest sett that a source gives for a purpose; no calculation takes one unasked.
 *
 * The "good working sett" is "about 3/4 or slightly more" in its source.
 *
 * @throws QuantityError "unknown-word" for a purpose that is none of them
 * @example purposeShare({ purpose: "ordinary" }).to.in(percentOf) // 80
 */
export function purposeShare(of: PurposeShareOf): PurposeShare {
  readInputs("purposeShare", { purpose: oneOf(Object.keys(published), "what the cloth is to do") }, of);
  const [from, to, source] = published[of.purpose];
  return Object.freeze({ from: percentOf(from), to: percentOf(to), source });
}
