/** What is said of an answer, a sentence each, in the order they are read. */
export interface Remarks {
  /** What was asked and what was answered: "warp length: 6.94 yd". */
  readonly about: string;
  readonly remarks: readonly string[];
}

/** Whether these are remarks and not a working or a quantity. */
export function isRemarks(thing: unknown): thing is Remarks {
  return typeof thing === "object" && thing !== null && Object.hasOwn(thing, "remarks");
}
