import { compare, oldWarpToKeep, times, yarnForEnds } from "@thrum/maths";
import type { Length, Source } from "@thrum/maths";
import type { Job } from "../job/job.js";
import { notesFromTheFell } from "./sources.js";
import { step } from "./step.js";
import type { PlanStep } from "./step.js";

/** What the place of the knots decides. */
export interface KnotPosition {
  readonly knotsTied: Job["loom"]["knotsTied"];
  /** What each knot must pass, in order. */
  readonly knotsPass: readonly ("reed" | "heddles")[];
  /** Where the old warp stands in for waste the new one would need. */
  readonly sparedAt: "front" | "back";
  readonly spared: Length;
  /** Yarn that need not be wound for it, in all ends together. */
  readonly sparedYarn: Length;
  /** Waste the new warp still has to bring. */
  readonly waste: Length;
  /** The old warp's order, kept on sticks while it is still tight; null where the reed keeps it. */
  readonly lease: string | null;
  /** Where to cut, and how much of the old warp to keep. */
  readonly cut: string;
  readonly cutSource: Source | "common practice, no source";
  /** What keeps the old ends from being drawn back; null where the lease sticks and the beater do. */
  readonly held: string | null;
  readonly beamed: "before tying" | "after tying";
  readonly beforeTying: string;
  /** How the knots are brought through, and the beaming where it is still to come. */
  readonly afterTying: string;
  readonly steps: readonly PlanStep[];
}

type Rule = Omit<KnotPosition, "knotsTied" | "spared" | "sparedYarn" | "waste" | "steps">;

const BACK_ROD =
  "Once it is cut, tie the back rod up to the back beam: left hanging, its weight draws the old ends back out of the heddles. (Source: common practice, no source.)";

const TAILS =
  "Trim the tails of the knots to about 1/2 in (1 cm), so that they do not catch. (Source: common practice, no source.)";

const BEAMED_FROM_FRONT =
  "Then untie the back rod from the back beam, free the warp beam and beam the new warp from the front: the row of knots goes with the back rod on to the warp beam. Fasten the front end of the new warp to the front rod in small groups, all of one tension.";

/** Tied from the front the old ends go on to the back rod; tied behind the heddles they come out on the front rod. */
const RULES: Readonly<Record<Job["loom"]["knotsTied"], Rule>> = {
  "in front of the reed": {
    knotsPass: ["reed", "heddles"],
    sparedAt: "back",
    lease: null,
    cut: "Cut in front of the reed. Leave about 8 in (20 cm) of old warp standing out of the reed, tied in groups so that it cannot slip back.",
    cutSource: notesFromTheFell,
    held: BACK_ROD,
    beamed: "after tying",
    beforeTying:
      "Fasten the chains at the breast beam, in that order, their lease on sticks between the beam and the reed.",
    afterTying: `${TAILS} Ease the knots back through the reed, then through the heddles, a few inches at a time. ${BEAMED_FROM_FRONT}`,
  },
  "behind the reed": {
    knotsPass: ["heddles"],
    sparedAt: "back",
    lease:
      "While the warp is still tight, put lease sticks into two opposite tabby sheds, behind the shafts: once out of the reed nothing else keeps its order. Where two neighbours share a shaft, pick the lease up by hand.",
    cut: "Cut behind the reed. Leave a hand's length of old warp standing out of the heddles, tied in groups so that it cannot slip back.",
    cutSource: "common practice, no source",
    held: BACK_ROD,
    beamed: "after tying",
    beforeTying:
      "Draw the stubs of the old warp forward out of the reed. Fasten the chains at the breast beam, in that order, their lease on sticks, and sley them through the reed from the front, as many ends to the dent and from the same dent as before.",
    afterTying: `${TAILS} Ease the knots back through the heddles, a few inches at a time. ${BEAMED_FROM_FRONT}`,
  },
  "behind the heddles": {
    knotsPass: ["heddles", "reed"],
    sparedAt: "front",
    lease:
      "While the warp is still tight, put lease sticks into two opposite tabby sheds, behind the shafts. Where two neighbours share a shaft, pick the lease up by hand.",
    cut: "Cut behind the lease sticks. Leave about 12 in (30 cm) of old warp behind the shafts and 6 in (15 cm) past the reed, tied in groups so that it cannot slip.",
    cutSource: oldWarpToKeep.declaration.source,
    held: null,
    beamed: "before tying",
    beforeTying:
      "Take what is left of the old warp off the back rod. Beam the new warp now, in that order, before tying: the ends without the lease go on to the back rod, spread by the raddle. Keep the lease on sticks behind the shafts, opposite those of the old warp.",
    afterTying: `${TAILS} Pull the knots forward through the heddles, then through the reed, gently, from the front, until their row lies in front of the reed with room to weave behind it. Fasten the old ends to the front rod in small groups, all of one tension. The first pick is woven behind the knots.`,
  },
};

/** What changes with the place where the knots are tied. */
export function knotPosition({ loom, newWarp }: Job, ends: number): KnotPosition {
  const rule = RULES[loom.knotsTied];
  const back = rule.sparedAt === "back";
  const spared = back ? newWarp.wasteBehind : newWarp.wasteInFront;
  const nothing = times(spared, 0);
  const input = { ends, warpLength: spared };
  const isSpared = compare(spared, nothing) > 0;
  return {
    knotsTied: loom.knotsTied,
    ...rule,
    spared,
    sparedYarn: isSpared ? yarnForEnds(input) : nothing,
    waste: back ? newWarp.wasteInFront : newWarp.wasteBehind,
    steps: isSpared ? [step(yarnForEnds, input)] : [],
  };
}
