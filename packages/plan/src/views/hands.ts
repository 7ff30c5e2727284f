import type { JobJoin } from "../job/join.js";
import type { Hand } from "../job/runs.js";
import type { SpecialEnd } from "../parts/special-ends.js";
import type { Inline, Line } from "./block.js";

/** The yarns of a hand with what joins them: together in any order, or strictly in turn. */
export function handLine({ yarns, order }: Hand): Line {
  const by = order === undefined ? " + " : " / ";
  return yarns.flatMap((yarn, at): readonly Inline[] => (at === 0 ? [{ yarn }] : [by, { yarn }]));
}

/** "7" or "7–24" */
export function fromTo(first: number | null, last: number | null): string | null {
  if (first === null || last === null) return null;
  return first === last ? String(first) : `${String(first)}–${String(last)}`;
}

/** "121–132": the numbers there are, those next to each other as one; nothing where one is not known. */
export function inStretches(numbers: readonly (number | null)[]): string | null {
  const stretches: [first: number, last: number][] = [];
  for (const number of numbers) {
    if (number === null) return null;
    const last = stretches.at(-1);
    if (last === undefined || number < last[0] || number > last[1] + 1) stretches.push([number, number]);
    else last[1] = Math.max(last[1], number);
  }
  return stretches.map(([first, last]) => fromTo(first, last)).join(", ");
}

/** A shaft, or that it floats; nothing where it is not known. */
export function shaftText(shaft: number | string): number | string | null {
  return shaft === "not known" ? null : shaft;
}

function onShaft(shaft: number | null): string {
  return shaft === null ? "" : ` on shaft ${String(shaft)}`;
}

type Partner = NonNullable<JobJoin["partner"]>;
const ITSELF: Partner = "thread it itself";

/** What is done where a place is not plainly one new end to one old one. */
function specialText({ is, newEnd, ends, oldEnd, cutBack, shaft, dent }: SpecialEnd, partner: Partner | null): string {
  const these = fromTo(newEnd, newEnd + Math.max(1, ends) - 1) ?? "";
  const old = oldEnd === null ? "" : String(oldEnd);
  const byItself = `pass over new ${these}: threaded by ${ends > 1 ? "themselves" : "itself"}, no knot`;
  switch (is) {
    case "added":
      return partner === ITSELF ? byItself : `tie new ${these} to the partners made before`;
    case "broken":
      if (partner === ITSELF) return byItself;
      return `tie new ${these} to its partner: the old end is broken`;
    case "mended":
      if (partner === ITSELF) return byItself;
      return `tie new ${these} to its partner: an end was left out`;
    case "left empty":
      return "pass over a broken place: no new end goes there";
    case "second on one knot":
      return `tie new ${these} into the knot before it`;
    case "cut back":
    case "one too many":
      return `cut back old ${old}, do not tie it`;
    case "dropped":
      return `pass over old ${fromTo(oldEnd, (oldEnd ?? 0) + cutBack - 1) ?? ""}: cut back before`;
    case "left out":
      return `pass over the jump in the threading${onShaft(shaft)}`;
    case "empty heddle":
      return `pass over the empty heddle${onShaft(shaft)}`;
    case "on another shaft":
      return `expect old ${old}${onShaft(shaft)}`;
    case "in another dent":
      return `expect old ${old} in dent ${String(dent ?? "")}`;
    case "joined":
    case "threaded":
      return "";
  }
}

/** Of a whole group, in one cell; nothing where there is nothing. */
export function specialsText(special: readonly SpecialEnd[], partner: Partner | null): string | null {
  return special.length === 0 ? null : special.map((one) => specialText(one, partner)).join("; ");
}

/** What is met there when the old warp is counted; of what is only added or dropped nothing. */
function foundText({ is, newEnd, oldEnd, shaft, dent }: SpecialEnd): string | null {
  const old = oldEnd === null ? "" : String(oldEnd);
  switch (is) {
    case "broken":
      return `a broken end, where new ${String(newEnd)} will go`;
    case "left empty":
      return "a broken end that stays so";
    case "mended":
      return `an end left out, where new ${String(newEnd)} will go`;
    case "one too many":
    case "cut back":
      return `old ${old} shares the heddle of the end before`;
    case "left out":
      return `a jump in the threading${onShaft(shaft)}`;
    case "empty heddle":
      return `an empty heddle${onShaft(shaft)}`;
    case "on another shaft":
      return `old ${old}${onShaft(shaft)}`;
    case "in another dent":
      return `old ${old} in dent ${String(dent ?? "")}`;
    case "added":
    case "dropped":
    case "second on one knot":
    case "joined":
    case "threaded":
      return null;
  }
}

/** Of a whole group, in one line; nothing where there is nothing. */
export function foundIn(special: readonly SpecialEnd[]): string | null {
  const found = special.flatMap((one) => foundText(one) ?? []);
  return found.length === 0 ? null : `as found before: ${found.join("; ")}`;
}
