import { asText, compare, difference, lossFromMeasures, percentLost } from "@thrum/maths";
import type { Length, Loss } from "@thrum/maths";
import type { JobFound } from "../job/found.js";
import { inSmallUnit, percentText } from "./amount-words.js";
import type { Told } from "./told.js";

/** Above this a take-up is asked about: common practice, no source; the law of the job file draws the line here. */
const MOST_TAKE_UP = percentLost(25);

/** Whether a take-up is so large that it is asked about. */
function isDoubtful(takeUp: Loss): boolean {
  return compare(takeUp, MOST_TAKE_UP) > 0;
}

/** Whether a take-up as measured is asked about: it grew, or it is large. */
export function isAskedAbout({ before, after }: NonNullable<JobFound["takeUp"]>): boolean {
  return compare(after, before) > 0 || isDoubtful(lossFromMeasures({ before, after }));
}

/** A take-up above 25 %, as planned or as found. */
export function againstTakeUp(takeUp: Loss, from: "cloth" | "found"): readonly Told[] {
  if (!isDoubtful(takeUp)) return [];
  const is = percentText(takeUp);
  const says =
    from === "found"
      ? `Take-up would be ${is}: was the whole warp measured, not the part between the two threads? Left out of the next job.`
      : `A take-up of ${is} is more than a quarter of the thread: is it meant, and is the shrinkage of the cloth not in it?`;
  return [{ standing: "ask", about: "take-up", says, values: { takeUp: is, from } }];
}

type Measure = readonly [name: string, length: Length | undefined];

function longerLater(measures: readonly Measure[], about: string): readonly Told[] {
  const there = measures.flatMap(([name, length]) => (length === undefined ? [] : [{ name, length }]));
  return there.flatMap(({ name, length }, at): readonly Told[] => {
    const before = there[at - 1];
    if (before === undefined || compare(length, before.length) <= 0) return [];
    const says = `Found ${about}: ${asText(length)} ${name} is more than ${asText(before.length)} ${before.name} before it. Which was misread? Left out of the next job.`;
    return [{ standing: "ask", about: `found ${about}`, says, values: { later: name, earlier: before.name } }];
  });
}

/** Measures of one piece in the order in which they are taken: none grows. */
export function againstMeasures({ takeUp, length = {}, width = {} }: JobFound): readonly Told[] {
  const ofThread: readonly Measure[] = [
    ["before", takeUp?.before],
    ["once woven", takeUp?.after],
  ];
  const lengths: readonly Measure[] = [
    ["on the loom", length.onLoom],
    ["off the loom", length.offLoom],
    ["finished", length.finished],
  ];
  const widths: readonly Measure[] = [
    ["in the reed", width.inReed],
    ["at the fell", width.atFell],
    ["off the loom", width.offLoom],
    ["finished", width.finished],
  ];
  return [...longerLater(ofThread, "take-up"), ...longerLater(lengths, "length"), ...longerLater(widths, "width")];
}

/** Measured in the reed, against the dents: a tape from end to end may miss one dent, no more. */
export function againstDents(inReed: Length, byDents: Length, oneDent: Length): readonly Told[] {
  const apart = compare(inReed, byDents) > 0 ? difference(inReed, byDents) : difference(byDents, inReed);
  if (compare(apart, oneDent) <= 0) return [];
  const [found, reckoned] = [asText(inReed), inSmallUnit(byDents)];
  const says = `Found in the reed: ${found}; the dents give ${reckoned}. Count the dents, or measure again. Left out of the next job.`;
  return [{ standing: "ask", about: "found width", says, values: { found, reckoned } }];
}
