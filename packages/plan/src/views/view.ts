import type { LookUp, Seen } from "../core/look-up.js";
import { togetherIn } from "../core/state.js";
import type { Part, Path, Source } from "../core/source.js";
import type { Row } from "../core/work.js";
import type { Block, Inline, Line, Manner } from "./block.js";
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
  readonly blocks: readonly Template[];
}

const NOTHING: Built = { blocks: [], needs: [], isOfJob: false };

function shownAs(hole: Hole): Shown {
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
export const check: Tag = tag("CHECK");
export const must: Tag = tag("MUST");

export function heading(text: string): Template {
  return { reads: [], build: () => ({ ...NOTHING, blocks: [{ is: "heading", heading: text }] }) };
}

function together(built: readonly Built[]): Built {
  return {
    blocks: built.flatMap(({ blocks }) => blocks),
    needs: built.flatMap(({ needs }) => needs),
    isOfJob: built.some(({ isOfJob }) => isOfJob),
  };
}

/** Several as one. */
export function all(...templates: readonly Template[]): Template {
  return {
    reads: templates.flatMap(({ reads }) => reads),
    build: (at) => together(templates.map((one) => one.build(at))),
  };
}

/** What is left out where it waits, and nobody is asked. */
export function optional(...templates: readonly Template[]): Template {
  const whole = all(...templates);
  return { reads: whole.reads, build: (at) => ({ ...whole.build(at), needs: [] }) };
}

/** A heading that stands only where something of the job stands under it. */
export function under(text: string, ...templates: readonly Template[]): Template {
  const whole = all(...templates);
  return {
    reads: whole.reads,
    build: (at) => {
      const built = whole.build(at);
      if (!built.isOfJob) return { ...built, blocks: [] };
      return { ...built, blocks: [{ is: "heading", heading: text }, ...built.blocks] };
    },
  };
}

/** Several ways, named by a word of the job; where it is not said, and need not be, another. */
export function byWord<W extends string>(
  word: Source<W, string>,
  ways: Readonly<Record<W, Template>>,
  unsaid?: Template,
): Template {
  const byName: Readonly<Record<string, Template>> = ways;
  const all = [...Object.values<Template>(ways), ...(unsaid === undefined ? [] : [unsaid])];
  return {
    reads: [word, ...all.flatMap(({ reads }) => reads)],
    build: (at) => {
      const seen = at.see(word, at.row);
      if (seen.is === "there") {
        const built = (byName[seen.value] ?? NONE).build(at);
        return { ...built, isOfJob: built.blocks.length > 0 };
      }
      if (unsaid !== undefined) return unsaid.build(at);
      return seen.is === "waiting" ? { ...NOTHING, needs: seen.needs } : NOTHING;
    },
  };
}

/** What stands only where an amount or a part is so. */
export function where<T>(
  source: Source<T, string>,
  holds: (value: T) => boolean,
  ...templates: readonly Template[]
): Template {
  const whole = all(...templates);
  return {
    reads: [source, ...whole.reads],
    build: (at) => {
      const seen = at.see(source, at.row);
      return seen.is === "there" && holds(seen.value) ? whole.build(at) : NOTHING;
    },
  };
}

/** No line at all. */
export const NONE: Template = { reads: [], build: () => NOTHING };

/** Once for each row of a scope. */
export function each(scope: string, template: Template): Template {
  return {
    reads: template.reads,
    build: (at) => {
      const rows = at.rows(scope);
      if (rows.is === "waiting") return { ...NOTHING, needs: rows.needs };
      return rows.is === "there" ? together(rows.value.map((row) => template.build({ ...at, row }))) : NOTHING;
    },
  };
}

/** Whatever an ordinary function makes of a part: it prints that part's own counts. */
export function fromPart<T>(part: Source<T, string>, make: (value: T, at: At) => readonly Block[]): Template {
  return {
    reads: [part],
    build: (at) => {
      const seen = at.see(part, at.row);
      if (seen.is === "waiting") return { ...NOTHING, needs: seen.needs };
      if (seen.is === "none")
        return {
          blocks: [{ is: "says", as: "note", says: [`${seen.label} ${seen.why}.`.trim()] }],
          needs: [],
          isOfJob: true,
        };
      const blocks = make(seen.value, at);
      return { blocks, needs: [], isOfJob: blocks.length > 0 };
    },
  };
}

/** Lines to be filled in. */
export function blanks(...what: readonly string[]): Template {
  return { reads: [], build: () => ({ ...NOTHING, blocks: [{ is: "blanks", what }] }) };
}

/** The part of a list, if it is one that is known. */
export type Rows<T> = Part<readonly T[], string>;

export { shownAs };
export type { Inline };
