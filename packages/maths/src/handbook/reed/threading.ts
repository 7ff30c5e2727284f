import { listOf, readInputs, whole } from "../../engine/formula/index.js";
import { described } from "../../engine/quantity/index.js";
import { QuantityError } from "../../engine/refusal.js";

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

const MOST_HEDDLES = 1_000_000;

/** Refuses what is no threading, in the name of the function that was asked. */
export function readThreading(name: string, { parts, ...others }: Threading): void {
  readInputs(name, { shafts: whole("shafts", "of the loom", { atLeast: 1, atMost: 1000 }) }, others);
  const refuse = (code: "empty" | "out-of-range", expected: string, received: string, remedy: string): never => {
    throw new QuantityError({ code, where: `${name}({ parts })`, expected, received, remedy });
  };
  if (!Array.isArray(parts) || parts.length === 0) {
    const remedy = "Write [{ threading: [1, 2, 3, 4], times: 90 }].";
    return refuse("empty", "a list of the parts of a threading", described(parts), remedy);
  }
  const declared = {
    threading: listOf(whole("shafts", "of every heddle in turn", { atLeast: 1, atMost: others.shafts })),
    times: whole("times", "the part stands in the width", { atLeast: 0 }),
  };
  let heddles = 0;
  parts.forEach((part: ThreadingPart, at) => {
    readInputs(`${name}.parts[${String(at)}]`, declared, part);
    heddles += part.threading.length * part.times;
  });
  if (heddles > MOST_HEDDLES) refuse("out-of-range", `at most ${String(MOST_HEDDLES)} heddles`, String(heddles), "");
}

/** The shaft of every end in turn. */
export function threadedShafts({ parts }: Threading): readonly number[] {
  return parts.flatMap(({ threading, times }) => Array.from({ length: times }, () => threading).flat());
}
