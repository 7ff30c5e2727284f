import { marksOf, onlyOptions } from "../../engine/quantity/index.js";
import type { NumeralMarks } from "../../engine/quantity/index.js";
import type { ReadingOptions } from "./amount.js";

/** The marks of the locale that a reader is given; a misspelt option is refused, not passed over. */
export function marksFor(options: ReadingOptions | undefined): NumeralMarks {
  onlyOptions("ReadingOptions", ["locale"], options);
  return marksOf(options?.locale ?? null);
}
