import { compare } from "@thrum/maths";
import type { Length } from "@thrum/maths";
import type { JobCloth } from "../job/cloth.js";
import type { JobFound } from "../job/found.js";
import type { WrittenLoss } from "../job/loss.js";
import type { Told } from "./told.js";

/** A loss by two measures of one piece; none where one of them is not known or is asked about. */
function measured(
  before: Length | undefined,
  after: Length | undefined,
  asked: readonly Told[],
): WrittenLoss | undefined {
  if (before === undefined || after === undefined || asked.length > 0) return undefined;
  return compare(after, before) > 0 ? undefined : { before, after };
}

/** What was found, as the cloth of the next job has it; a measure that is asked about is not carried. */
export function clothFound(
  { firstInches, takeUp, length, width }: JobFound,
  asked: { readonly takeUp: readonly Told[]; readonly length: readonly Told[]; readonly width: readonly Told[] },
): Pick<JobCloth, "picks" | "takeUp" | "lengthLoomToFinished" | "widthReedToFinished"> {
  const found = {
    picks: firstInches?.picks,
    takeUp: measured(takeUp?.before, takeUp?.after, asked.takeUp),
    lengthLoomToFinished: measured(length?.onLoom, length?.finished, asked.length),
    widthReedToFinished: measured(width?.inReed, width?.finished, asked.width),
  };
  const { picks, takeUp: ofThread, lengthLoomToFinished, widthReedToFinished } = found;
  return {
    ...(picks === undefined ? {} : { picks }),
    ...(ofThread === undefined ? {} : { takeUp: ofThread }),
    ...(lengthLoomToFinished === undefined ? {} : { lengthLoomToFinished }),
    ...(widthReedToFinished === undefined ? {} : { widthReedToFinished }),
  };
}
