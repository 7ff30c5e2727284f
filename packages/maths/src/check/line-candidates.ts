import type { Decimal } from "../engine/numbers.js";
import type { Run } from "../engine/formula/index.js";
import type { LineOptions, WrittenLine } from "./judged-line.js";
import { countingsOf } from "./line-units.js";
import type { Counting } from "./line-units.js";
import { readWritten } from "./written.js";

/** A figure as it may be meant: in one unit or another. */
export interface Candidate {
  readonly counting: Counting;
  readonly claimed: Decimal;
  readonly step: Decimal;
  readonly hasUnit: boolean;
}

/** The ways a figure may be meant, the likeliest first. */
export function candidatesOf(
  worked: Run,
  name: string,
  figure: WrittenLine,
  options: LineOptions,
): readonly Candidate[] {
  const [text, own] = typeof figure === "string" ? [figure, undefined] : figure;
  const countings = countingsOf(worked, name, options.unit ?? null, own);
  return countings.flatMap((counting): Candidate[] => {
    const { value, step, unit } = readWritten(["firstWrongLine", name], text, counting.unit, options.locale);
    return [{ counting, claimed: value, step, hasUnit: unit !== "none" || own !== undefined }];
  });
}
