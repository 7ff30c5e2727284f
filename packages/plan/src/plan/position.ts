import type { Length } from "@thrum/maths";
import type { Job } from "../job/job.js";

/** What the place of the knots decides. */
export interface KnotPosition {
  readonly knotsTied: Job["loom"]["knotsTied"];
  /** What each knot must pass, in order. */
  readonly knotsPass: readonly ("reed" | "heddles")[];
  /** Where the old warp stands in for waste the new one would need. */
  readonly sparedAt: "front" | "back";
  readonly spared: Length;
  /** Waste the new warp still has to bring. */
  readonly waste: Length;
  readonly beam: string;
  readonly keep: string;
}

interface Rule {
  readonly knotsPass: KnotPosition["knotsPass"];
  readonly sparedAt: KnotPosition["sparedAt"];
  readonly beam: string;
  readonly keep: string;
}

/** Tied from the front the old ends go on to the back rod; tied behind the heddles they come out on the front rod. */
const RULES: Readonly<Record<Job["loom"]["knotsTied"], Rule>> = {
  "in front of the reed": {
    knotsPass: ["reed", "heddles"],
    sparedAt: "back",
    beam: "Ease the knots back through the reed, then through the heddles, a few inches at a time, and beam the new warp from the front.",
    keep: "Cut in front of the reed. Leave about 8 in of old warp standing out of the reed, tied in groups so that it cannot slip back.",
  },
  "behind the reed": {
    knotsPass: ["heddles"],
    sparedAt: "back",
    beam: "Sley the new ends through the reed first; ease the knots back through the heddles, a few inches at a time, and beam the new warp from the front.",
    keep: "Cut behind the reed. Leave a hand's length of old warp standing out of the heddles, tied in groups so that it cannot slip back.",
  },
  "behind the heddles": {
    knotsPass: ["heddles", "reed"],
    sparedAt: "front",
    beam: "Beam the new warp before tying; when all is tied, ease the knots forward through the heddles, then through the reed, from the front.",
    keep: "Put lease sticks into two opposite sheds behind the shafts, then cut at the back. Leave about 12 in behind the shafts and 6 in past the reed, tied in groups.",
  },
};

/** What changes with the place where the knots are tied. */
export function knotPosition({ loom, newWarp }: Job): KnotPosition {
  const rule = RULES[loom.knotsTied];
  const back = rule.sparedAt === "back";
  return {
    knotsTied: loom.knotsTied,
    ...rule,
    spared: back ? newWarp.wasteBehind : newWarp.wasteInFront,
    waste: back ? newWarp.wasteInFront : newWarp.wasteBehind,
  };
}
