import type { Sleyed } from "../job/loom.js";
import type { RunKind } from "./laid.js";

/** Dents that follow each other, sleyed alike. */
export interface LaidDents {
  readonly dents: number;
  /** Ends in each; none where they are left empty. */
  readonly at: number;
  /** In all; fewer where the last dent is not full. */
  readonly ends: number;
}

/** A sley in ends; empty dents hold none. */
export const SLEY: RunKind<Sleyed, LaidDents> = {
  counted: "ends",
  isOpen: () => false,
  closed: (sleyed) => {
    if (typeof sleyed === "number") return { dents: 1, at: sleyed, ends: sleyed };
    if ("empty" in sleyed) return { dents: sleyed.empty, at: 0, ends: 0 };
    const { at } = sleyed;
    return "dents" in sleyed
      ? { dents: sleyed.dents, at, ends: sleyed.dents * at }
      : { dents: Math.ceil(sleyed.ends / at), at, ends: sleyed.ends };
  },
  size: ({ ends }) => ends,
  isNothing: () => false,
  turned: (dents) => dents,
  together: () => null,
  placed: (dents) => dents,
};
