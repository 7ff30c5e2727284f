import type { Reading, RefusalCode } from "@thrum/maths";
import { printable } from "../text/printable.js";
import type { Fault } from "./fault.js";
import { frozen } from "./frozen.js";
import { textFault } from "./text-fault.js";

export type Tell = (fault: Omit<Fault, "function">) => void;

interface Reader<T> {
  /** The function that refuses. */
  readonly name: string;
  /** What the text should be: "the text of a progress file". */
  readonly what: string;
  readonly longest: number;
  /** What stands in the text; null where it tells why nothing does. */
  readonly read: (text: string, tell: Tell) => T | null;
}

const LONGEST_SENTENCE = 1000;

/** What a reader finds in anything it is given, or every fault it tells. */
export function textReading<T>(given: unknown, { name, what, longest, read }: Reader<T>): Reading<T, RefusalCode> {
  const faults: Fault[] = [];
  const clean = (words: string): string => printable(words, LONGEST_SENTENCE);
  const tell: Tell = ({ expected, received, remedy, ...fault }) => {
    const sentence = { expected: clean(expected), received: clean(received), remedy: clean(remedy) };
    faults.push({ ...fault, function: name, ...sentence });
  };
  const unread = textFault(given, what, longest);
  if (unread !== null) tell(unread);
  const value = typeof given === "string" && unread === null ? read(given, tell) : null;
  if (value === null && faults.length === 0)
    tell({ code: "missing", path: [], line: 1, expected: what, received: "nothing", remedy: "Write it.", params: {} });
  const [first, ...others] = faults;
  if (first !== undefined) return frozen({ ok: false, faults: [first, ...others] });
  if (value === null) throw new RangeError(`${name} read nothing and told nothing`);
  return frozen({ ok: true, value });
}
