import { jobTextWith, pathText, readJob, writtenValue } from "@thrum/plan";
import type { Fault, JobChange, WrittenValue } from "@thrum/plan";
import { isWithin, stepsOf } from "./path.js";
import { typedText, valueOf } from "./typed.js";

/** A job being planned: the text always reads; what does not read yet is kept as it was typed. */
export interface Draft {
  readonly text: string;
  readonly typed: Readonly<Record<string, string>>;
}

/** What she has just answered; null takes the answer away. */
export interface Change {
  readonly path: string;
  readonly value: WrittenValue | null;
}

export interface Settled extends Draft {
  /** Sentences by the place of the field. */
  readonly faults: Readonly<Record<string, string>>;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Place, what was expected, what to write; the line is the file's and no field has one. */
function sentence(fault: Fault, at: readonly (string | number)[]): string {
  const inside = isWithin(fault.path, at) ? fault.path.slice(at.length) : fault.path;
  const place = inside.length === 0 ? "" : `${pathText(inside)}: `;
  const found = /^(?:nothing|"")$/u.test(fault.received) ? "" : `, not ${fault.received}`;
  return `${place}${capital(`${fault.expected}${found}.`)} ${fault.remedy}`.trim();
}

/** One yarn all of the piece is a weft without a group: another answer about it makes it one. */
function opened(text: string, changes: readonly Change[]): readonly JobChange[] {
  const whole = writtenValue(text);
  const weft = typeof whole === "object" && whole !== null && "weft" in whole ? whole["weft"] : undefined;
  const asks = changes.some(({ path }) => path.startsWith("weft."));
  const isGroup = typeof weft === "object" && !Array.isArray(weft);
  return asks && weft !== undefined && !isGroup ? [{ path: ["weft"], value: { stripes: weft } }] : [];
}

function tried(text: string, changes: readonly Change[]): { readonly text: string; readonly faults: readonly Fault[] } {
  const written = changes.map(({ path, value }) => ({ path: stepsOf(path), value: valueOf(path, value) }));
  const changed = jobTextWith(text, [...opened(text, changes), ...written]);
  const reading = readJob(changed);
  return { text: changed, faults: reading.ok ? [] : reading.faults };
}

/**
 * The draft after some answers: those that read stand in the text, the others are kept as typed until they do.
 *
 * @param draft as it stood
 * @param changes answered together: a new colour, and its entry among the yarns
 */
export function settled(draft: Draft, changes: readonly Change[]): Settled {
  const answered = new Set(changes.map(({ path }) => path));
  const waiting = Object.entries(draft.typed).filter(([path]) => !answered.has(path));
  const again = waiting.map(([path, value]): readonly Change[] => [{ path, value }]);
  const steps = changes.length > 0 ? [changes, ...again] : again;
  const all = tried(draft.text, steps.flat());
  if (all.faults.length === 0) return { text: steps.length > 0 ? all.text : draft.text, typed: {}, faults: {} };
  let { text } = draft;
  const typed: Record<string, string> = {};
  const faults: Record<string, string> = {};
  for (const step of steps) {
    const one = tried(text, step);
    if (one.faults.length === 0) {
      text = one.text;
      continue;
    }
    for (const { path, value } of step) {
      const at = stepsOf(path);
      const own = one.faults.filter((fault) => isWithin(fault.path, at));
      const told = own.length > 0 ? own : step.length === 1 ? one.faults : [];
      typed[path] = typedText(value);
      if (told.length > 0) faults[path] = told.map((fault) => sentence(fault, at)).join(" ");
    }
  }
  return { text, typed, faults };
}
