import { Unreadable } from "./fault.js";
import { handText } from "./hand-text.js";
import type { Hand } from "./runs.js";
import { yarnNameFault } from "./yarn-name.js";

/** The yarns of a hand as one writes them: `plum + pink`, `plum / pink`. */
export function readHand(written: string): Hand {
  const inTurn = written.includes(" / ");
  if (inTurn && written.includes(" + "))
    throw new Unreadable("Either both in the hand at once, with +, or strictly in turn, with /.");
  const yarns = written.split(inTurn ? " / " : " + ").map((name) => name.normalize("NFC"));
  for (const name of yarns) {
    const fault = yarnNameFault(name);
    if (fault !== undefined) throw new Unreadable(fault, "unreadable", "the name of a yarn", JSON.stringify(name));
  }
  return inTurn ? { yarns, order: "strictly in turn" } : { yarns };
}

/** What a run is of, and of what on the way back, when what is taken in turn is turned round. */
export function handOf({ yarns, order }: Hand): { readonly of: string; readonly turned: string } {
  const of = handText(order === undefined ? { yarns } : { yarns, order });
  return { of, turned: order === undefined ? of : [...yarns].reverse().join(" / ") };
}

const MOST = 1_000_000;

/** A whole number and what stands behind it: `24 natural`, `the rest natural`. */
export function numberAndRest(written: string): readonly [number: number | "the rest", rest: string] | null {
  const [, digits = "", rest = ""] = /^(the rest|\d+) (.+)$/u.exec(written) ?? [];
  if (digits === "") return null;
  if (digits === "the rest") return [digits, rest];
  const number = Number(digits);
  if (number >= 1 && number <= MOST) return [number, rest];
  throw new Unreadable(`Write a whole number from 1 to ${String(MOST)}.`, "out-of-range");
}
