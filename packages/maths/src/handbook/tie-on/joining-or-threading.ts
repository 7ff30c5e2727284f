import { atLeastZero, plainNumber, readInputs, whole } from "../../engine/formula/index.js";
import type { ReportStep } from "../../engine/formula/index.js";
import { frozen } from "../../engine/frozen.js";
import { difference, sign, times } from "../../engine/quantity/index.js";
import { Length } from "../../units/index.js";
import { hoursToJoin } from "./hours-to-join.js";
import type { HoursToJoinInput } from "./hours-to-join.js";

export interface JoiningOrThreadingInput {
  readonly ends: number;
  /** Counted on a first hundred. */
  readonly knotsPerHour: number;
  /** Hours of all else that joining takes: both leases, drawing the knots through. */
  readonly otherHoursJoining: number;
  /** Of threading and sleying together. */
  readonly endsPerHourThreading: number;
  /** Hours of all else that a fresh start takes: the lease, looking for errors. */
  readonly otherHoursThreading: number;
  /** New warp spared at each end of the loom together, of every end. */
  readonly newWarpSpared: Length;
  /** Old warp that could have been woven and is kept for the knots instead, of every end. */
  readonly oldWarpGivenUp: Length;
}

/** What joining saves against threading and sleying afresh. */
export interface JoiningOrThreading {
  readonly hoursJoining: number;
  readonly hoursThreading: number;
  /** Below zero where joining takes longer. */
  readonly hoursSaved: number;
  /** Of yarn in all ends; below nothing where more old warp is given up than new is spared. */
  readonly yarnSaved: Length;
  readonly says: string;
  readonly steps: readonly ReportStep<HoursToJoinInput>[];
}

/**
 * Whether joining a new warp to the old one saves hours or yarn against threading and sleying afresh. What it always saves is
 * a threading and a sley that are proved.
 *
 * @param input the ends, the speed of both ways, and the warp that each spares
 * @throws QuantityError for a field that is missing, unknown or of another kind, one error for all
 * @source common practice, no source
 * @example
 * const hours = { knotsPerHour: 200, otherHoursJoining: 1, endsPerHourThreading: 100, otherHoursThreading: 1 };
 * joiningOrThreading({ ends: 400, ...hours, newWarpSpared: inches(18), oldWarpGivenUp: inches(0) }).hoursSaved // 2
 */
export function joiningOrThreading(input: JoiningOrThreadingInput): JoiningOrThreading {
  const declared = {
    ends: whole("ends", "one knot to each", { atLeast: 1 }),
    knotsPerHour: plainNumber("knots an hour", "counted on a first hundred"),
    otherHoursJoining: plainNumber("hours", "of leases and of drawing the knots through"),
    endsPerHourThreading: plainNumber("ends an hour", "threaded and sleyed"),
    otherHoursThreading: plainNumber("hours", "of the lease and of looking for errors"),
    newWarpSpared: atLeastZero(Length, "of every end"),
    oldWarpGivenUp: atLeastZero(Length, "of every end, kept for the knots"),
  };
  readInputs("joiningOrThreading", declared, input);
  const { ends, knotsPerHour, endsPerHourThreading } = input;
  const knots = { knots: ends, knotsPerHour };
  const threading = { knots: ends, knotsPerHour: endsPerHourThreading };
  const hoursJoining = hoursToJoin(knots) + input.otherHoursJoining;
  const hoursThreading = hoursToJoin(threading) + input.otherHoursThreading;
  const hoursSaved = hoursThreading - hoursJoining;
  const perEnd = difference(input.newWarpSpared, input.oldWarpGivenUp);
  const yarnSaved = times(perEnd, ends);
  const saves = sign(yarnSaved) > 0;
  const hours = `${Math.abs(hoursSaved).toFixed(1)} hours ${hoursSaved >= 0 ? "fewer" : "more"} than threading afresh`;
  const says = `Joining takes ${hours} and ${saves ? `saves ${String(perEnd)} of every end` : "saves no yarn"}. The proved threading and sley are kept either way of reckoning.`;
  const steps = [{ calculation: hoursToJoin, input: knots }];
  return frozen({ hoursJoining, hoursThreading, hoursSaved, yarnSaved, says, steps });
}
