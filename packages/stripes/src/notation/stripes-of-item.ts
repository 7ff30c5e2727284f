import { refuse } from "../refusal/check.js";
import { described } from "../refusal/described.js";
import { MOST_ENDS, refuseLength } from "../sequence/made-sequence.js";
import type { Stripe } from "../sequence/sequence.js";
import { colourNamed, type Legend } from "./legend.js";

const ITEM = /^(?:(?:end|then) )?(\d{1,8}) (.+)$/;
const GROUP = /^[^\s/]+(?:\/[^\s/]+)+$/;

/** The stripes of `8 dark`, or of the group `48 D/LL` repeated until it fills its ends. */
export function stripesOfItem<C>(refusedBy: string, legend: Legend<C>, word: string, position: number): Stripe<C>[] {
  const [, count, name = ""] = ITEM.exec(word) ?? [];
  const ends = Number(count);
  if (count === undefined || ends === 0) {
    return unreadable(refusedBy, "a number of ends and a name, such as 20 pink", word, position);
  }
  if (ends > MOST_ENDS) refuseLength(refusedBy, ends);
  if (!GROUP.test(name)) return [{ colour: colourNamed(refusedBy, legend, name, position), ends }];
  const group = name.split("/").map((letters) => {
    const letter = letters.charAt(0);
    if (letters !== letter.repeat(letters.length)) unreadable(refusedBy, "one letter over and over", letters, position);
    return { colour: colourNamed(refusedBy, legend, letter, position), ends: letters.length };
  });
  const times = ends / group.reduce((sum, stripe) => sum + stripe.ends, 0);
  if (!Number.isInteger(times)) {
    refuse(refusedBy, "does-not-fit", "text", {
      expected: "a whole number of groups",
      received: `${ends} ends of ${described(name)}`,
      remedy: "Write the part group apart.",
      position,
    });
  }
  return Array.from({ length: times }, () => group).flat();
}

function unreadable(refusedBy: string, expected: string, received: string, position: number): never {
  return refuse(refusedBy, "unreadable", "text", {
    expected,
    received: described(received),
    remedy: "Mend the text there.",
    position,
  });
}
