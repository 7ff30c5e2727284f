import type { Told } from "../working/index.js";
import type { UnitVerdict } from "./claim.js";

/** A slip that gives just the number claimed. */
export interface FoundSlip {
  /** "a sum that … gives this" */
  readonly says: string;
  /** The line of the formula it stands at; empty where an input or the answer is misread. */
  readonly line: string;
  /** What the sum with the slip comes to, in the unit of the claim. */
  readonly value: string;
}

/** What can be said of a claim; `says` is all of it in sentences, as the printers write it. */
export interface Verdict extends Told {
  /** Whether number and unit are both as good as the answer; by another convention too, where none is stated. */
  readonly right: boolean;
  /** The number alone; where the unit is missing or of another kind it is judged in the unit of the answer. */
  readonly value:
    | "right"
    | "within the tolerance"
    | "right by the adding rule"
    | "right by the dividing rule"
    | "cut off, not rounded"
    | "wrong";
  readonly unit: UnitVerdict;
  /** What the digits written are to the answer: all of it, rounded (halves up), cut off, or none of it. */
  readonly digits: "exact" | "rounded" | "cut off" | "not of the answer";
  /** The exact answer rounded, halves up, to the digits the claim was written to. */
  readonly rounded: string;
  readonly exact: string;
  /** The slips that give the claim, each alone, the likeliest first; several are a tie, as is one with a number cut off. */
  readonly slips: readonly FoundSlip[];
  /** What would tell tied slips apart; null where there is no tie. */
  readonly tellApart: string | null;
  /** What the wrong number costs in the input the formula names: "finished length about 1/4 in short". */
  readonly cost: string | null;
  /** Slips that this check cannot see, because to these digits they give the right answer. */
  readonly unseen: readonly FoundSlip[];
  /** What else there is to say: of a unit that is not the one asked for, of a convention. */
  readonly notes: readonly string[];
}
