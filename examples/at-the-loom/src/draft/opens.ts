/** A question of the plan, in loom order: its answer opens more. */
export interface Row {
  readonly number: string;
  /** Where its words stand. */
  readonly name: RowName;
  /** Any of these answers it. */
  readonly keys: readonly string[];
}

export type RowName =
  "stripes" | "reed" | "length" | "oldWarp" | "tie" | "pieces" | "yarns" | "weft" | "winding" | "more";

export const ROWS: readonly Row[] = [
  { number: "1", name: "stripes", keys: ["stripes"] },
  { number: "2", name: "reed", keys: ["loom.reed", "cloth.sett"] },
  { number: "3", name: "length", keys: ["warp.length", "pieces"] },
  { number: "4", name: "oldWarp", keys: ["oldWarp"] },
  { number: "5", name: "tie", keys: ["join.knots"] },
  { number: "6", name: "pieces", keys: ["pieces"] },
  { number: "7", name: "yarns", keys: ["yarns"] },
  { number: "8", name: "weft", keys: ["weft"] },
  { number: "9", name: "winding", keys: ["winding.threads"] },
  { number: "+", name: "more", keys: [] },
];

/** The nearest questions that have no answer yet. */
export function nextOpens(isAnswered: (path: string) => boolean, most = 3): readonly Row[] {
  return ROWS.filter(({ keys }) => keys.length > 0 && !keys.some(isAnswered)).slice(0, most);
}
