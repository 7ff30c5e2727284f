import { compare, difference, inUnit, inches, sum } from "@thrum/maths";
import type { Length } from "@thrum/maths";
import { amountText } from "@thrum/plan";
import type { PlanData, Progress, Units } from "@thrum/plan";
import type { Mark } from "../work/loom.js";

const NOTHING = inches(0);

/** Where each piece stops; a piece woven longer or shorter than planned moves the marks after it. */
export function marksOf(
  plan: PlanData,
  units: Units,
  { wovenTo = [] }: Pick<Progress, "wovenTo">,
): readonly Mark[] | null {
  const tape = plan.figures.tape.marks.value;
  if (tape === null) return null;
  let longer: Length = NOTHING;
  let shorter: Length = NOTHING;
  const ofSome = (length: Length): string | null => (compare(length, NOTHING) > 0 ? amountText(length, units) : null);
  return tape.marks.map(({ title, to, from, hem, fringe, ofEntry, inRun }) => {
    const planned = sum(to, longer);
    const at = difference(planned, shorter);
    const stopped = wovenTo.find(({ piece }) => piece === inRun)?.at;
    if (stopped !== undefined) {
      const found = inUnit(stopped, inches);
      if (compare(found, at) > 0) longer = sum(longer, difference(found, at));
      else shorter = sum(shorter, difference(at, found));
    }
    const one = amountText(difference(to, from), units);
    return { title, ofEntry, at: amountText(stopped ?? at, units), one, hem: ofSome(hem), fringe: ofSome(fringe) };
  });
}
