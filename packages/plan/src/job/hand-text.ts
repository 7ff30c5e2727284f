import type { Hand } from "./runs.js";

/** The yarns of a hand as one writes them: `plum + pink`, `plum / pink`. */
export function handText({ yarns, order }: Hand): string {
  return yarns.join(order === undefined ? " + " : " / ");
}
