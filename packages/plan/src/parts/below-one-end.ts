import { listed } from "./told.js";
import type { Told } from "./told.js";

/** A chain that may weigh less than one end of a yarn holds none of it. */
export function belowOneEnd(most: number | Readonly<Record<string, number>> | null): readonly Told[] {
  if (most === null || typeof most === "number") return [];
  const yarns = Object.keys(most).filter((yarn) => most[yarn] === 0);
  if (yarns.length === 0) return [];
  const says = `The most of a chain is less than one end of ${listed(yarns)} weighs: allow a heavier chain (winding.most), or say its most in ends.`;
  return [{ standing: "must", about: "chain", says, values: { yarns, most: 0 } }];
}
