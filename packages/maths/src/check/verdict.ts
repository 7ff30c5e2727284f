import type { Told } from "../engine/working/index.js";
import type { UnitVerdict } from "./claim.js";
import type { Fact } from "./facts.js";
import type { FoundPairs } from "./pairs.js";

/** A wrong sum that gives just the number claimed. */
export interface FoundSlip {
  /** What was done, the same for other numbers: a program may compare it. */
  readonly key: string;
  /** "a sum that … gives this" */
  readonly says: string;
  /** The line of the formula it stands at; empty where an input or the answer is misread. */
  readonly line: string;
  /** What the wrong sum comes to, in the unit of the claim. */
  readonly value: string;
  /** "certain": right about 19 times in 20; "likely": the evidence is for it; "would fit": a plain slip of arithmetic fits as well. */
  readonly certainty: "certain" | "likely" | "would fit";
  /** The wrong sum itself for other inputs of the same question, in the unit of the claim; null where it gives none. */
  readonly at: (input: unknown) => number | null;
}

/** What can be said of a claim; `says` is all of it in at most three sentences. */
export interface Verdict extends Told {
  /** Whether number and unit are both as good as the answer; by another convention too, where none is stated. */
  readonly right: boolean;
  /** Whether the method may be sound: right, or off by no more than a rounding a careful hand can make. */
  readonly sound: boolean;
  /** The number alone; where the unit is missing or of another kind it is judged in the unit of the answer. */
  readonly value:
    | "right"
    | "within the tolerance"
    | "right by the adding rule"
    | "right by the dividing rule"
    | "right but for the last figure"
    | "right, rounded for use"
    | "not finished"
    | "cut off, not rounded"
    | "wrong";
  readonly unit: UnitVerdict;
  /** What the digits written are to the answer: all of it, rounded (halves up), cut off, or none of it. */
  readonly digits: "exact" | "rounded" | "cut off" | "not of the answer";
  /** The exact answer rounded, halves up, to the digits the claim was written to. */
  readonly rounded: string;
  readonly exact: string;
  /** What is true of a wrong number whatever was done, the most telling first. */
  readonly facts: readonly Fact[];
  /** The wrong sums that explain the claim clearly better than a plain slip of arithmetic; at most three, the likeliest first. */
  readonly slips: readonly FoundSlip[];
  /** For the teacher, on asking: wrong sums that would fit, where a plain slip of arithmetic fits as well. */
  readonly wouldFit: readonly FoundSlip[];
  /** What would tell tied slips apart; null where there is no tie. */
  readonly tellApart: string | null;
  /** What the wrong number costs in the input the formula names: "finished length about 1/4 in short". */
  readonly cost: string | null;
  /** The first line to look at; null where the formula has one line only, or nothing tells. */
  readonly lookAt: string | null;
  /**
   * On asking, for it is a hundred checks' work: two slips that give the claim together, neither of them alone. Many pairs fit any
   * number by chance; where no slip is named and at most three pairs fit they are worth telling.
   */
  readonly pairs: () => FoundPairs;
  /** For the teacher: wrong sums that this check cannot see, because to these digits they give the right answer. */
  readonly unseen: readonly FoundSlip[];
  /** What else there is to say: of a unit that is not the one asked for, of a convention. */
  readonly notes: readonly string[];
}
