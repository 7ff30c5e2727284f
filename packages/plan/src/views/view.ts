import type { LookUp, Seen } from "../core/look-up.js";
import { togetherIn } from "../core/state.js";
import type { Path, Source } from "../core/source.js";
import type { Row } from "../core/row.js";
import type { Block, Line, Manner } from "./block.js";
import type { Units } from "./units.js";
import { plainly } from "./formats.js";

/** A plan being read, at one row where there is one. */
export interface At extends LookUp {
  readonly units: Units;
  readonly row: Row | null;
}

/** What a hole of a sentence or a table prints. */
export interface Shown {
  readonly reads: readonly Source<unknown, string>[];
  readonly say: (at: At) => Seen<Line>;
}

export type Hole = Source<unknown, string> | Shown;

export interface Built {
  readonly blocks: readonly Block[];
  readonly needs: readonly Path[];
  readonly isOfJob: boolean;
}

/** What stands in a section: what it reads, and what it comes to. */
export interface Template {
  readonly reads: readonly Source<unknown, string>[];
  readonly build: (at: At) => Built;
}

/** A page of the plan, before any plan is there. */
export interface View {
  readonly name: string;
  readonly heading: string;
  /** Its heading where no old warp is there. */
  readonly afresh?: string;
  readonly blocks: readonly Template[];
}

/** Prints nothing, and waits for nothing. */
export const NOTHING: Built = { blocks: [], needs: [], isOfJob: false };

/** A hole as it is shown: of a bare figure the usual way. */
export function shownAs(hole: Hole): Shown {
  return "say" in hole ? hole : shown(hole, plainly);
}

/** An amount, said in a way of its own. */
export function shown<T>(
  source: Source<T | null, string>,
  format: (value: T, units: Units, at: At) => string | Line,
): Shown {
  return {
    reads: [source],
    say: (at) => {
      const seen = at.see(source, at.row);
      if (seen.is !== "there") return seen;
      if (seen.value === null) return { is: "waiting", needs: [] };
      const text = format(seen.value, at.units, at);
      return { is: "there", value: typeof text === "string" ? [text] : text };
    },
  };
}

function wordsAndHoles(words: readonly string[], holes: readonly Seen<Line>[]): Line {
  return words.flatMap((word, at) => {
    const hole = holes[at];
    return [...(word === "" ? [] : [word]), ...(hole?.is === "there" ? hole.value : [])];
  });
}

function sentence(as: Manner, words: readonly string[], holes: readonly Hole[]): Template {
  const made = holes.map(shownAs);
  const reads = made.flatMap((one) => one.reads);
  return {
    reads,
    build: (at) => {
      const seen = made.map((hole) => hole.say(at));
      const missing = togetherIn(
        seen.map((one) =>
          one.is === "none" ? { ...one, way: null } : one.is === "there" ? { ...one, way: null } : one,
        ),
      );
      if (missing === null)
        return { blocks: [{ is: "says", as, says: wordsAndHoles(words, seen) }], needs: [], isOfJob: reads.length > 0 };
      if (missing.is === "waiting") return { ...NOTHING, needs: missing.needs };
      const why = seen.flatMap((one) => (one.is === "none" ? [`${one.label}: ${one.why}.`] : []));
      return { blocks: why.map((says) => ({ is: "says", as, says: [says] })), needs: [], isOfJob: true };
    },
  };
}

type Tag = (words: TemplateStringsArray, ...holes: readonly Hole[]) => Template;
const tag =
  (as: Manner): Tag =>
  (words, ...holes) =>
    sentence(as, words, holes);

/** A sentence; its holes are figures and keys, nothing else. */
export const says: Tag = tag("fact");
/** What is done now, and ticked. */
export const step: Tag = tag("step");
export const caution: Tag = tag("caution");
