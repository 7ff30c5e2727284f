import type { OpenPlace } from "./laid.js";
import { counted } from "./told.js";
import type { Told } from "./told.js";

/** What is over of an open place that does not come out whole. */
export function openOver(open: OpenPlace | null): readonly Told[] {
  if (open === null || open.over === 0) return [];
  const { number, over, closes } = open;
  const [below, above] = closes;
  const says = `The open place of the stripes stands ${counted(number, "time")}; ${counted(over, "end is", "ends are")} over. ${String(below)} or ${String(above)} ends close it.`;
  return [{ standing: "check", about: "stripes", says, values: { number, over, below, above } }];
}
