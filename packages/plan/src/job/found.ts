import type { Length, PicksPerLength } from "@thrum/maths";
import { length, lengthOrNone } from "./amounts.js";
import type { Form } from "./form.js";
import { number } from "./forms.js";
import { group } from "./group.js";
import { measures } from "./loss.js";
import { picksPerLength } from "./per-length.js";
import type { Meanings } from "./meaning.js";

/** What was measured. */
export interface JobFound {
  readonly firstInches?: { readonly picks?: PicksPerLength; readonly width?: Length };
  /** Between two threads tied to the warp: before, and once woven. */
  readonly takeUp?: { readonly before: Length; readonly after: Length };
  readonly length?: { readonly onLoom?: Length; readonly offLoom?: Length; readonly finished?: Length };
  readonly width?: {
    readonly inReed?: Length;
    readonly atFell?: Length;
    readonly offLoom?: Length;
    readonly finished?: Length;
  };
  /** From the fell to the knots; tied behind the heddles, to the back rod. */
  readonly warpLeft?: Length;
  readonly waste?: { readonly inFront?: Length; readonly behind?: Length };
  readonly knotsPerHour?: number;
}

type Part<K extends keyof JobFound> = NonNullable<JobFound[K]>;

export const found: Form<JobFound> = group<JobFound>({
  firstInches: group<Part<"firstInches">>({ picks: picksPerLength, width: length }),
  takeUp: measures,
  length: group<Part<"length">>({ onLoom: length, offLoom: length, finished: length }),
  width: group<Part<"width">>({ inReed: length, atFell: length, offLoom: length, finished: length }),
  warpLeft: lengthOrNone,
  waste: group<Part<"waste">>({ inFront: lengthOrNone, behind: lengthOrNone }),
  knotsPerHour: number("knots an hour", 10_000),
});

/** What each key of `found` means, for the schema. */
export const foundMeans: Meanings = {
  firstInches: "On the first cloth woven.",
  "firstInches.picks": "Picks counted there.",
  "firstInches.width": "Its width.",
  takeUp: "Between two threads tied to the warp: before, and once woven.",
  length: "Of one piece.",
  width: "Of one piece.",
  "length.onLoom": "At weaving tension.",
  "length.offLoom": "Cut off.",
  "length.finished": "Finished.",
  "width.inReed": "In the reed.",
  "width.atFell": "At the fell.",
  "width.offLoom": "Cut off.",
  "width.finished": "Finished.",
  warpLeft: "From the fell to the knots; tied behind the heddles, to the back rod.",
  waste: "What could not be woven.",
  "waste.inFront": "In front.",
  "waste.behind": "Behind.",
  knotsPerHour: "Knots tied in an hour.",
};
