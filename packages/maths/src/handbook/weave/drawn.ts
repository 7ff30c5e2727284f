import { described } from "../../engine/quantity/index.js";
import { missingOr, refuse } from "../../engine/refusal.js";
import type { Place } from "../../engine/refusal.js";

/**
 * A weave drawn pick by pick, one text a pick: "x" where the end lies over the pick, "." where it lies under.
 *
 * @example weaveQuantities(["xx..", ".xx.", "..xx", "x..x"]).ends // 4
 */
export type Weave = readonly string[];

const MOST = 1000;

/** The weave as rows of true and false, or the refusal of what is no drawing of one. */
export function drawn(caller: string, weave: Weave): readonly (readonly boolean[])[] {
  const where: Place = [caller, "weave"];
  const remedy = 'Draw every pick of one repeat, for example ["x.", ".x"].';
  const rows: unknown = weave;
  if (!Array.isArray(rows) || rows.length === 0 || rows.length > MOST) {
    const many = Array.isArray(rows) && rows.length > MOST ? "too-long" : "empty";
    const code = missingOr(rows, Array.isArray(rows) ? many : "wrong-kind");
    return refuse(code, where, `a list of 1 to ${String(MOST)} picks`, described(rows), remedy);
  }
  const ends = typeof rows[0] === "string" ? rows[0].length : 0;
  return Array.from(rows, (row: unknown, at) => {
    const fits = typeof row === "string" && row.length === ends && ends > 0 && ends <= MOST;
    const unread = (expected: string): never => refuse("unreadable", [...where, at], expected, described(row), remedy);
    if (!fits) {
      const width = ends > 0 && ends <= MOST ? String(ends) : `1 to ${String(MOST)}`;
      return unread(`a pick over ${width} ends`);
    }
    return Array.from(row, (mark) => {
      if (mark === "x" || mark === ".") return mark === "x";
      return unread('only "x" and "."');
    });
  });
}
