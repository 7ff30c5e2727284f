import { positive, readInputs, whole } from "../../engine/formula/index.js";
import type { ReportStep } from "../../engine/formula/index.js";
import { frozen } from "../../engine/frozen.js";
import { DentsPerLength, Length } from "../../units/index.js";
import { dentsInReed } from "./dents-in-reed.js";
import type { DentsInReedInput } from "./dents-in-reed.js";

export interface RoomInReedInput {
  readonly reed: DentsPerLength;
  /** Between the end bars. */
  readonly reedLength: Length;
  /** That the warp takes, empty ones among them. */
  readonly dents: number;
}

/** Whether a warp finds room in a reed, and where it begins when it stands in the middle. */
export interface RoomInReed {
  readonly verdict: "fits" | "does not fit";
  readonly dentsInReed: number;
  /** Dents of the reed less dents of the warp; below zero where they are too few. */
  readonly dentsLeft: number;
  /** Left of the warp when it stands in the middle; the odd dent stays at the right. */
  readonly emptyAtLeft: number;
  readonly emptyAtRight: number;
  readonly says: string;
  readonly steps: readonly ReportStep<DentsInReedInput>[];
}

function inWords(left: number, right: number, short: number): string {
  if (short > 0) return `The reed is ${String(short)} ${short === 1 ? "dent" : "dents"} too short for this warp.`;
  const uneven = left === right ? "" : ": one more, as the warp cannot stand quite in the middle";
  return `The warp begins in dent ${String(left + 1)} from the left and leaves ${String(right)} empty at the right${uneven}.`;
}

/**
 * Room for a warp in a reed: the dents it has, those it needs, and the dent to begin in so that the warp stands in the middle.
 *
 * @param input the reed and its length, and the dents of the warp
 * @throws QuantityError for a field that is missing, unknown or of another kind, one error for all
 * @source common practice
 * @example roomInReed({ reed: dentsPerInch(10), reedLength: inches(25), dents: 203 }).emptyAtLeft // 23
 */
export function roomInReed(input: RoomInReedInput): RoomInReed {
  const declared = {
    reed: positive(DentsPerLength, "of the reed"),
    reedLength: positive(Length, "between the end bars"),
    dents: whole("dents", "that the warp takes", { atLeast: 1 }),
  };
  readInputs("roomInReed", declared, input);
  const { reed, reedLength, dents } = input;
  const step = { reed, reedLength };
  const inReed = dentsInReed(step);
  const dentsLeft = inReed - dents;
  const emptyAtLeft = Math.max(0, Math.floor(dentsLeft / 2));
  const emptyAtRight = Math.max(0, dentsLeft - emptyAtLeft);
  return frozen({
    verdict: dentsLeft >= 0 ? "fits" : "does not fit",
    dentsInReed: inReed,
    dentsLeft,
    emptyAtLeft,
    emptyAtRight,
    says: inWords(emptyAtLeft, emptyAtRight, -dentsLeft),
    steps: [{ calculation: dentsInReed, input: step }],
  });
}
