import { withLines } from "../work/act.js";
import type { Here, Lines, WorkRecord } from "./records.js";

/** What is written the moment a tap is taken, before anything slower: what changed since the last record kept. */
export interface Mark {
  readonly seq: number;
  /** The record it stands on. */
  readonly base: number;
  readonly at: number;
  readonly here: Here;
  readonly lines: Lines;
}

const name = (job: string): string => `thrum-mark:${job}`;

const isMark = (value: unknown): value is Mark =>
  typeof value === "object" &&
  value !== null &&
  ["seq", "base", "at"].every((key) => typeof (value as Record<string, unknown>)[key] === "number") &&
  ["here", "lines"].every((key) => typeof (value as Record<string, unknown>)[key] === "object");

/** Lines that are gone are written as null: JSON leaves out what is undefined. */
const asJson = (mark: Mark): string =>
  JSON.stringify(mark, (_, value: unknown) => (value === undefined ? null : value));

/** Keeps the mark; says whether the device took it. */
export function putMark(job: string, mark: Mark, storage: () => Storage = () => localStorage): boolean {
  try {
    storage().setItem(name(job), asJson(mark));
    return true;
  } catch {
    return false;
  }
}

export function markOf(job: string, storage: () => Storage = () => localStorage): Mark | null {
  try {
    const kept: unknown = JSON.parse(storage().getItem(name(job)) ?? "null");
    if (!isMark(kept)) return null;
    const written: readonly (readonly [string, unknown])[] = Object.entries(kept.lines);
    const lines = written.map(([key, value]) => [key, value === null ? undefined : value]);
    return { ...kept, lines: Object.fromEntries(lines) as Lines };
  } catch {
    return null;
  }
}

/** The record and the mark, whichever is further on: the higher number wins. */
export function furthest(record: WorkRecord | null, mark: Mark | null, fresh: WorkRecord): WorkRecord {
  const base = record ?? fresh;
  if (mark === null || mark.seq <= base.seq) return base;
  const progress = withLines(base.progress, mark.lines);
  const keys = Object.keys(mark.lines) as (keyof Lines)[];
  const before = Object.fromEntries(keys.map((key) => [key, base.progress[key]])) as Lines;
  const past = [...base.past, { here: base.here, progress: before, found: null }];
  return { ...base, seq: mark.seq, at: mark.at, progress, here: mark.here, past };
}
