import { refuseLength, stripe } from "../sequence/made-sequence.js";
import type { Stripe } from "../sequence/sequence.js";
import { refuseText } from "./refuse-text.js";
import { MOST_WRITTEN_ENDS } from "./written-order.js";

const ITEM = /^(?:(?:end|then) )?(\d{1,8}) (.+)$/;

/** What a name at a character of the text stands for, or its refusal. */
export type Named<C> = (name: string, position: number) => C;

/** The stripes of `8 dark`, or of the group `48 D/LL` repeated until it fills its ends. */
export function stripesOfItem<C>(refusedBy: string, named: Named<C>, word: string, position: number): Stripe<C>[] {
  const [, count, name = ""] = ITEM.exec(word) ?? [];
  const ends = Number(count);
  if (!(ends > 0))
    return refuseText(refusedBy, "unreadable", "a number of ends and a name, such as 20 pink", word, position);
  if (ends > MOST_WRITTEN_ENDS) refuseLength(refusedBy, ends, MOST_WRITTEN_ENDS);
  if (!name.includes("/")) return [stripe(named(name, position), ends)];
  const group = name.split("/").map((letters) => {
    const letter = letters.charAt(0);
    if (letters !== letter.repeat(letters.length))
      refuseText(refusedBy, "unreadable", "one letter over and over", letters, position);
    return stripe(named(letter, position), letters.length);
  });
  const times = ends / group.reduce((sum, { ends: some }) => sum + some, 0);
  if (!Number.isInteger(times)) refuseText(refusedBy, "does-not-fit", "a whole number of groups", word, position);
  return Array.from({ length: times }, () => group).flat();
}
