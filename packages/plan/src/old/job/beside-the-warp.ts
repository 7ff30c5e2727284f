import * as v from "valibot";
import { count, positive, yarnName } from "./values.js";

/** Ends wound beside the warp and not joined to the old one, by the name of their yarn. */
export interface JobExtraEnds {
  readonly sample: Readonly<Record<string, number>>;
  /** Kept for broken ends. */
  readonly repairs: Readonly<Record<string, number>>;
}

/** Colours as a screen shows them or an instrument measured them. */
export interface JobColoursSeen {
  /** Neighbours that differ by less are hard to tell apart; the difference of CIEDE2000. */
  readonly leastDifference: number;
  /** sRGB, such as "#2b3a67", by the name of the yarn. */
  readonly colours: Readonly<Record<string, string>>;
}

const MOST_EXTRA = 1000;
const LARGEST_DIFFERENCE = 100;

const extraOf = v.record(yarnName, count("ends", MOST_EXTRA), "the ends of each yarn by its name, {} for none|");

export const extraEndsSchema: v.GenericSchema<unknown, JobExtraEnds> = v.object({ sample: extraOf, repairs: extraOf });

const screenAdvice = 'a colour of a screen, such as "#2b3a67"|Write it in quotation marks: # alone begins a remark.';

export const coloursSeenSchema: v.GenericSchema<unknown, JobColoursSeen> = v.object({
  leastDifference: positive("steps of CIEDE2000", LARGEST_DIFFERENCE),
  colours: v.record(
    yarnName,
    v.pipe(v.string(screenAdvice), v.regex(/^#[0-9A-Fa-f]{6}$/u, screenAdvice)),
    "the colour of each yarn by its name|",
  ),
});
