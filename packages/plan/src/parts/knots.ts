import { knotsThroughHeddles, knotsThroughReed } from "@thrum/maths";
import type { KnotGrade, Length } from "@thrum/maths";
import { waits } from "../core/waits.js";
import type { JobJoin } from "../job/join.js";
import type { HeddleEye } from "../job/loom.js";
import type { JobYarn } from "../job/yarns.js";
import type { LaidStripe } from "./laid-stripes.js";
import { finishedCount, threadDiameter } from "./thread-diameter.js";

/** Whether the knots of one new yarn pass the reed, and the heddles where an eye was measured. */
export interface KnotsOfYarn {
  readonly yarn: string;
  readonly diameter: Length;
  /** The free space of a dent, in diameters of the thicker thread, and how far it can be known. */
  readonly clearance: number;
  readonly from: number;
  readonly to: number;
  readonly needs: number;
  /** What the new threads of the fullest dent take side by side. */
  readonly sideBySide: Length;
  readonly reed: readonly KnotGrade[];
  readonly standing: "must" | "check" | "free";
  readonly heddles: "passes" | "does not pass untouched" | "not measured";
}

export interface KnotsGiven {
  readonly stripes: readonly LaidStripe[];
  readonly yarns: Readonly<Record<string, JobYarn>>;
  /** Across the thickest old thread. */
  readonly oldDiameter: Length;
  readonly space: Length;
  /** The most ends of any dent. */
  readonly endsInDent: number;
  readonly knot: NonNullable<JobJoin["knot"]>;
  readonly eye: HeddleEye | null;
}

/** For each yarn of the stripes; the thicker of old and new thread decides. */
export function knotsOfYarns(given: KnotsGiven): readonly KnotsOfYarn[] {
  const { yarns, oldDiameter, space, endsInDent, knot, eye } = given;
  const names = [...new Set(given.stripes.flatMap((stripe) => stripe.yarns))];
  return names.map((yarn): KnotsOfYarn => {
    const count = Object.hasOwn(yarns, yarn) ? yarns[yarn]?.count : undefined;
    const diameter = threadDiameter(finishedCount(count ?? waits("yarns", yarn, "count")));
    const threads = { oldDiameter, newDiameter: diameter, knot };
    const reed = knotsThroughReed({ space, endsInDent, ...threads });
    const { clearance, from, to, needs, sideBySide, grades, standing } = reed;
    const ofEye = eye === null ? null : { eyeWidth: eye.wide, eyeHeight: eye.high, eye: eye.of };
    const heddles = ofEye === null ? "not measured" : knotsThroughHeddles({ ...ofEye, ...threads }).verdict;
    return { yarn, diameter, clearance, from, to, needs, sideBySide, reed: grades, standing, heddles };
  });
}

/** The most ends that stand in one dent. */
export function mostInDent(dents: readonly (number | null)[]): number {
  const ends = new Map<number, number>();
  for (const dent of dents) if (dent !== null) ends.set(dent, (ends.get(dent) ?? 0) + 1);
  return [...ends.values()].reduce((most, one) => Math.max(most, one), 0);
}
