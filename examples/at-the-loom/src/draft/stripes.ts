import type { WrittenValue } from "@thrum/plan";
import type { Change } from "./draft.js";

/** One run as it is typed: its ends, and the colours in the hand. */
export interface TypedRun {
  readonly ends: string;
  readonly hand: string;
}

export type Runs = readonly WrittenValue[];
export type Rule = Readonly<Record<string, WrittenValue>>;

const OPEN = "the rest";

/** `24 natural` in its two fields; `the rest` stands for a number. */
export function typedRun(run: string): TypedRun {
  const ends = run.startsWith(OPEN) ? OPEN : (/^\S*/u.exec(run)?.[0] ?? "");
  return { ends, hand: run.slice(ends.length).trim() };
}

export const runText = ({ ends, hand }: TypedRun): string => `${ends} ${hand}`.trim();

export const isRule = (run: WrittenValue): run is Rule => typeof run === "object" && !Array.isArray(run);

/** The runs that a rule holds. */
export function heldBy(rule: Rule): Runs {
  const held = rule["mirror"] ?? rule["of"] ?? [];
  return Array.isArray(held) ? (held as Runs) : [held];
}

/** The rule with other runs in it. */
export function holding(rule: Rule, runs: Runs): Rule {
  return "mirror" in rule ? { ...rule, mirror: runs } : { ...rule, of: runs };
}

/** Every colour named, each once, in the order met. */
export function coloursIn(runs: Runs): readonly string[] {
  const names = runs.flatMap((run): readonly string[] => {
    if (isRule(run)) return coloursIn(heldBy(run));
    return typeof run === "string" ? typedRun(run).hand.split(/\s*[+/]\s*/u) : coloursIn(run);
  });
  return [...new Set(names.filter((name) => name !== ""))];
}

const entries = (yarns: WrittenValue | null): readonly (readonly [string, WrittenValue])[] =>
  yarns === null || typeof yarns === "string" || Array.isArray(yarns) ? [] : Object.entries(yarns);

const isNothing = (yarn: WrittenValue): boolean => typeof yarn === "object" && Object.keys(yarn).length === 0;

export const yarnPath = (name: string): string =>
  /^[\p{L}\p{N}_-]+$/u.test(name) ? `yarns.${name}` : `yarns[${JSON.stringify(name)}]`;

/**
 * What the list of yarns needs beside a change: where there is one, it is the list of all names. A name half typed that
 * says nothing goes again.
 */
export function yarnsBeside(used: readonly string[], yarns: WrittenValue | null, begin = false): readonly Change[] {
  if (yarns === null && !begin) return [];
  const there = entries(yarns);
  const missing = used.filter((name) => !there.some(([known]) => known === name));
  const gone = there.filter(([name, yarn]) => isNothing(yarn) && !used.includes(name));
  return [
    ...gone.map(([name]) => ({ path: yarnPath(name), value: null })),
    ...missing.map((name) => ({ path: yarnPath(name), value: {} })),
  ];
}
