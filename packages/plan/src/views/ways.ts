import type { Source } from "../core/source.js";
import type { Block } from "./block.js";
import { NOTHING } from "./view.js";
import type { At, Built, Template } from "./view.js";

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

/** Left out while something in it is missing; the page does not ask for what is missing. */
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

/** What stands only where a key is not said. */
export function unsaid(key: Source<unknown, string>, ...templates: readonly Template[]): Template {
  const whole = all(...templates);
  return {
    reads: [key, ...whole.reads],
    build: (at) => (at.see(key, at.row).is === "waiting" ? whole.build(at) : NOTHING),
  };
}

/** Prints nothing, and waits for nothing. */
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

/** A template that looks at one source more, without waiting for it. */
export function alsoReading(source: Source<unknown, string>, template: Template): Template {
  return { reads: [source, ...template.reads], build: template.build };
}

/** Lines to be filled in. */
export function blanks(...what: readonly string[]): Template {
  return { reads: [], build: () => ({ ...NOTHING, blocks: [{ is: "blanks", what }] }) };
}
