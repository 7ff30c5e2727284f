import type { RefusalCode } from "@thrum/maths";

export { faultsText, faultText, pathText } from "@thrum/maths";
export type { Fault, FaultPath, Faults } from "@thrum/maths";

/** Why a text cannot be read as what belongs there; the form that reads it says where it stood. */
export class Unreadable extends Error {
  constructor(
    readonly remedy: string,
    readonly code: RefusalCode = "unreadable",
    readonly expected?: string,
    readonly received?: string,
  ) {
    super(remedy);
  }
}
