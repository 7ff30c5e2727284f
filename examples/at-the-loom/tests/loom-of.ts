import { readFileSync } from "node:fs";
import { loomViews } from "../src/reckon/loom-views.js";
import type { Loom } from "../src/work/loom.js";

/** The plan of an example as the screens at the loom see it. */
export function loomOf(file: string, change: (text: string) => string = (text) => text): Loom {
  return loomViews.loom(change(readFileSync(`examples/jobs/${file}`, "utf8")));
}
