import { listOf, readInputs, whole } from "../../engine/formula/index.js";
import { requireList } from "../../engine/quantity/index.js";
import { allTogether, refuse } from "../../engine/refusal.js";
import type { Place } from "../../engine/refusal.js";

/** A part of a threading: a repeat, a block, a border. */
export interface ThreadingPart {
  /** The shaft of every heddle in turn, from 1. */
  readonly threading: readonly number[];
  /** How often the part stands in the width. */
  readonly times: number;
}

/** A whole threading, from end 1 on; a doubled end shares its heddle and is written once. */
export interface Threading {
  /** Of the loom. */
  readonly shafts: number;
  readonly parts: readonly ThreadingPart[];
}

const MOST_SHAFTS = 1000;
const MOST_HEDDLES = 1_000_000;

/** Refuses what is no threading, in the name of the function that was asked. */
export function readThreading(name: string, threading: Threading): void {
  const { parts, ...others } = Object(threading) as Threading;
  const shafts = { shafts: whole("shafts", "of the loom", { atLeast: 1, atMost: MOST_SHAFTS }) };
  const where: Place = [name, "parts"];
  const readParts = (): void => {
    const remedy = "Write [{ threading: [1, 2, 3, 4], times: 90 }].";
    requireList(where, parts, "a list of the parts of a threading", remedy);
    allTogether(...Array.from(parts, (part, at) => () => readInputs([...where, at], declared, part)));
  };
  const known = Number.isSafeInteger(others.shafts) && others.shafts >= 1 && others.shafts <= MOST_SHAFTS;
  const atMost = known ? others.shafts : MOST_SHAFTS;
  const declared = {
    threading: listOf(whole("shafts", "of every heddle in turn", { atLeast: 1, atMost })),
    times: whole("times", "the part stands in the width", { atLeast: 0 }),
  };
  allTogether(() => readInputs(name, shafts, others), readParts);
  const heddles = parts.reduce((total, part) => total + part.threading.length * part.times, 0);
  if (heddles > MOST_HEDDLES) refuse("out-of-range", where, `at most ${String(MOST_HEDDLES)} heddles`, String(heddles));
}

/** The shaft of every end in turn. */
export function threadedShafts({ parts }: Threading): readonly number[] {
  return parts.flatMap(({ threading, times }) => Array.from({ length: times }, () => threading).flat());
}
