import { atLeastZero, oneOf, readInputs } from "../../engine/formula/index.js";
import { sum, times } from "../../engine/quantity/index.js";
import { Length } from "../../units/index.js";

/** Where the knots are tied. */
export type KnotsTied = "in front of the reed" | "behind the reed" | "behind the heddles";

export interface WasteByKnotsInput {
  readonly knotsTied: KnotsTied;
  /** Waste of a warp that is threaded afresh: from the front rod to the first pick. */
  readonly wasteInFront: Length;
  /** From the last pick to the back rod. */
  readonly wasteBehind: Length;
}

/** The waste of a warp tied to an old one: the old ends stand in at one side of the loom, never at both. */
export interface WasteByKnots {
  readonly inFront: Length;
  readonly behind: Length;
  readonly inAll: Length;
  readonly sparedAt: "front" | "back";
  readonly spared: Length;
  readonly says: string;
}

/**
 * Loom waste of a warp that is tied on, front and back apart. Tied in front, the old ends are drawn back and fill the loom
 * behind; tied behind, they come forward on to the front rod.
 *
 * @param input where the knots are tied, and the waste of a warp threaded afresh
 * @throws QuantityError for a field that is missing, unknown or of another kind, one error for all
 * @source common practice, no source
 * @example
 * const usual = { wasteInFront: inches(10), wasteBehind: inches(18) };
 * wasteByKnots({ knotsTied: "behind the heddles", ...usual }).inAll.in(inches) // 18
 */
export function wasteByKnots(input: WasteByKnotsInput): WasteByKnots {
  const declared = {
    knotsTied: oneOf(["in front of the reed", "behind the reed", "behind the heddles"], "where the knots are tied"),
    wasteInFront: atLeastZero(Length, "of a warp threaded afresh, to the first pick"),
    wasteBehind: atLeastZero(Length, "of a warp threaded afresh, from the last pick"),
  };
  readInputs("wasteByKnots", declared, input);
  const { knotsTied, wasteInFront, wasteBehind } = input;
  const fromBehind = knotsTied === "behind the heddles";
  const inFront = fromBehind ? times(wasteInFront, 0) : wasteInFront;
  const behind = fromBehind ? wasteBehind : times(wasteBehind, 0);
  const spared = fromBehind ? wasteInFront : wasteBehind;
  const says = fromBehind
    ? `The old ends come forward on to the front rod: ${String(spared)} of new warp is spared there, the waste behind stays.`
    : `The old ends are drawn on to the back rod: ${String(spared)} of new warp is spared there, the waste in front stays.`;
  const sparedAt = fromBehind ? "front" : "back";
  return Object.freeze({ inFront, behind, inAll: sum(inFront, behind), sparedAt, spared, says });
}
