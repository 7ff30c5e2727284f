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

export interface HeddlesPerShaftInput {
  readonly shafts: number;
  readonly parts: readonly ThreadingPart[];
}

export interface HeddlesPerShaft {
  /** On shaft 1, on shaft 2 and so on. */
  readonly onEach: readonly number[];
  readonly heddles: number;
}

/**
 * Heddles that a threading takes on each shaft: those of a repeat as often as it stands, and those of the borders.
 *
 * A doubled end shares its heddle and is written once.
 *
 * @param input how many shafts, and the parts of the threading with how often each stands
 * @throws QuantityError "out-of-range" for a shaft the loom has not
 * @source common practice
 * @example heddlesPerShaft({ shafts: 4, parts: [{ threading: [1, 2, 3, 4, 3, 2], times: 60 }, { threading: [1], times: 1 }] }).onEach // [61, 120, 120, 60]
 */
export function heddlesPerShaft(input: HeddlesPerShaftInput): HeddlesPerShaft {
  const { parts, ...others } = input;
  readInputs("heddlesPerShaft", { shafts: whole("shafts", "of the loom", { atLeast: 1, atMost: 1000 }) }, others);
  if (!Array.isArray(parts) || parts.length === 0) {
    throw new QuantityError({
      code: "empty",
      where: "heddlesPerShaft({ parts })",
      expected: "a list of the parts of a threading",
      received: described(parts),
      remedy: "Write [{ threading: [1, 2, 3, 4], times: 90 }].",
    });
  }
  const onEach = Array.from({ length: input.shafts }, () => 0);
  const declared = {
    threading: listOf(whole("shafts", "of every heddle in turn", { atLeast: 1, atMost: input.shafts })),
    times: whole("times", "the part stands in the width", { atLeast: 0 }),
  };
  parts.forEach((part: ThreadingPart, at) => {
    readInputs(`heddlesPerShaft.parts[${String(at)}]`, declared, part);
    for (const shaft of part.threading) onEach[shaft - 1] = (onEach[shaft - 1] ?? 0) + part.times;
  });
  const heddles = onEach.reduce((total, on) => total + on, 0);
  return Object.freeze({ onEach: Object.freeze(onEach), heddles });
}
