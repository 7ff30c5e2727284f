import type { EndsPerLength, Length, PicksPerLength } from "@thrum/maths";
import type { LaidChain } from "@thrum/stripes";
import type { Job } from "../job/job.js";
import type { FibreContent } from "./content.js";
import type { CostPlan } from "./costs.js";
import type { ExtraEnds } from "./extra-ends.js";
import type { FirstInches } from "./first-inches.js";
import type { WarpFit } from "./fit.js";
import type { FoundPlan } from "./found.js";
import type { OldGroup, TyingGroup } from "./groups.js";
import type { JoiningRow } from "./joining.js";
import type { Joinable } from "./knots.js";
import type { PieceTape } from "./piece-tape.js";
import type { KnotPosition } from "./position.js";
import type { ShedProof } from "./shed-proof.js";
import type { PlanStep } from "./step.js";
import type { WoundChain } from "./winding.js";
import type { YarnPlan } from "./yarns.js";

/** One warp from the old thrums to the joining, in the order of the work at the loom. */
export interface WarpPlan {
  readonly title: string;
  readonly note: string;
  /** The old warp in groups, to be counted before anything is cut. */
  readonly oldGroups: readonly OldGroup[];
  readonly position: KnotPosition;
  readonly fit: WarpFit;
  readonly joinable: Joinable;
  readonly sett: EndsPerLength;
  readonly widthInReed: Length;
  readonly finishedWidth: Length;
  readonly pieces: number;
  readonly warpLength: Length;
  readonly ends: number;
  readonly yarns: readonly YarnPlan[];
  /** Wound beside the warp and not joined, in its yarn and in nothing else. */
  readonly extraEnds: readonly ExtraEnds[];
  /** The chains in the order wound. */
  readonly winding: readonly WoundChain[];
  readonly threadsTogether: number;
  /** The chains as they lie before the weaver, from her left. */
  readonly laid: readonly LaidChain<string>[];
  readonly weaverFaces: Job["loom"]["weaverFaces"];
  /** The side on which the weaver, as she sits, finds end 1. */
  readonly endOneAt: "left" | "right";
  readonly knot: Job["loom"]["knot"];
  readonly joining: readonly JoiningRow[];
  /** The knots in groups, to be counted on both warps before they are tied. */
  readonly groups: readonly TyingGroup[];
  readonly shedProof: readonly ShedProof[];
  /** As found on the first inches, else as planned. */
  readonly picks: PicksPerLength;
  readonly weftYarn: string;
  readonly pieceTape: PieceTape;
  readonly warpLengthByAdding: Length;
  readonly firstInches: FirstInches | null;
  readonly found: FoundPlan | null;
  readonly costs: CostPlan | null;
  readonly fibres: readonly FibreContent[] | null;
  /** The sums behind width and length; the position and the yarns carry their own. */
  readonly steps: readonly PlanStep[];
}
