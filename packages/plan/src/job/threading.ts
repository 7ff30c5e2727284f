import { Unreadable } from "./fault.js";
import { text } from "./form.js";
import type { Form, Notation, Tree } from "./form.js";
import type { Runs } from "./runs.js";
import { runs } from "./runs-form.js";

/** One end on a shaft; several ends in one heddle; an end in no heddle. */
export type Threaded = number | { readonly ends: number; readonly shaft: number } | "floating";

/** Ends of one dent; a stretch by its dents, or by its ends; dents left empty. */
export type Sleyed =
  | number
  | { readonly dents: number; readonly at: number }
  | { readonly ends: number; readonly at: number }
  | { readonly empty: number };

const MOST_SHAFTS = 1000;
const MOST_ENDS = 20_000;

function wholeOf(digits: string, most: number): number {
  const number = /^\d{1,9}$/u.test(digits) ? Number(digits) : 0;
  if (number >= 1 && number <= most) return number;
  throw new Unreadable(`Write whole numbers from 1 to ${String(most)}.`, "out-of-range");
}

const threaded: Notation<Threaded> = {
  read: (written) => {
    if (written === "floating") return written;
    const [, ends, shaft] = /^(\d+) ends? on (\d+)$/u.exec(written) ?? [];
    if (ends !== undefined && shaft !== undefined)
      return { ends: wholeOf(ends, MOST_ENDS), shaft: wholeOf(shaft, MOST_SHAFTS) };
    if (/^\d+$/u.test(written)) return wholeOf(written, MOST_SHAFTS);
    throw new Unreadable("Write the shaft, such as 3, or 2 ends on 3, or floating.");
  },
  write: (run) => {
    if (typeof run !== "object") return String(run);
    return `${String(run.ends)} ${run.ends === 1 ? "end" : "ends"} on ${String(run.shaft)}`;
  },
};

const dents = (number: number): string => `${String(number)} ${number === 1 ? "dent" : "dents"}`;

const sleyedNotation: Notation<Sleyed> = {
  read: (written) => {
    const [, number = "", noun, at] = /^(\d+) (dent|end)s? at (\d+)$/u.exec(written) ?? [];
    if (at !== undefined) {
      const each = { at: wholeOf(at, MOST_ENDS) };
      return noun === "dent"
        ? { dents: wholeOf(number, MOST_ENDS), ...each }
        : { ends: wholeOf(number, MOST_ENDS), ...each };
    }
    const empty = /^(\d+) dents? empty$/u.exec(written)?.[1];
    if (empty !== undefined) return { empty: wholeOf(empty, MOST_ENDS) };
    if (/^\d+$/u.test(written)) return wholeOf(written, MOST_ENDS);
    throw new Unreadable("Write the ends in one dent, such as 2, or 12 dents at 3, 36 ends at 3, 4 dents empty.");
  },
  write: (run) => {
    if (typeof run === "number") return String(run);
    if ("empty" in run) return `${dents(run.empty)} empty`;
    if ("dents" in run) return `${dents(run.dents)} at ${String(run.at)}`;
    return `${String(run.ends)} ${run.ends === 1 ? "end" : "ends"} at ${String(run.at)}`;
  },
};

/** A bare number is written as a number. */
function bare<T>(form: Form<T>): Form<T> {
  const write = (value: T): Tree => (typeof value === "number" ? value : form.write(value));
  return { ...form, write };
}

const isNever = (): boolean => false;

export const threading: Form<Runs<Threaded>> = runs<Threaded>({
  noun: "ends",
  run: bare(text("the shaft of an end", "3", threaded)),
  isOpen: isNever,
  measured: (run) => ({ size: typeof run === "object" ? run.ends : 1, of: null, turned: null }),
});

function dentsAndEnds(run: Sleyed): number {
  if (typeof run === "number") return run;
  if ("empty" in run) return run.empty;
  return "dents" in run ? run.dents * run.at : run.ends;
}

export const sleyed: Form<Runs<Sleyed>> = runs<Sleyed>({
  noun: "ends and empty dents",
  run: bare(text("the ends in a dent", "2", sleyedNotation)),
  isOpen: isNever,
  measured: (run) => ({ size: dentsAndEnds(run), of: null, turned: null }),
});
