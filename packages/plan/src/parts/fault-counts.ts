import type { WarpFault } from "../job/old-warp.js";

interface Found {
  readonly faults: readonly WarpFault[];
}

function total(faults: readonly WarpFault[], number: (fault: WarpFault) => number): number {
  return faults.reduce((so, fault) => so + number(fault), 0);
}

function endsOf(fault: WarpFault): number {
  return fault.is === "broken" ? (fault.ends ?? 1) : 0;
}

export function brokenEnds({ faults }: Found): number {
  return total(faults, endsOf);
}

/** Broken, and their place left empty. */
export function leftEmpty({ faults }: Found): number {
  return total(faults, (fault) => (fault.is === "broken" && fault.mend === false ? endsOf(fault) : 0));
}

export function tooManyEnds({ faults }: Found): number {
  return total(faults, ({ is }) => (is === "one too many" ? 1 : 0));
}

/** Left out, and put in now. */
export function mendedPlaces({ faults }: Found): number {
  return total(faults, (fault) => (fault.is === "left out" && fault.mend === true ? 1 : 0));
}
