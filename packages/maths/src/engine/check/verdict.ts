/** A slip that gives just the number claimed. */
export interface FoundSlip {
  /** "a sum that … gives this" */
  readonly says: string;
  /** The line of the formula it stands at; empty where an input or the answer is misread. */
  readonly line: string;
  /** What the sum with the slip comes to, in the unit of the claim. */
  readonly value: string;
}

/** What can be said of a claim. */
export interface Verdict {
  /** Whether the number is the answer in the unit claimed, to the digits written or within the tolerance named. */
  readonly right: boolean;
  readonly value: "right" | "within the tolerance" | "cut off, not rounded" | "wrong";
  /** Whether the claim is in the unit the question's answer takes, or another of its kind, which is as good. */
  readonly unit: "as asked" | "another of its kind" | "none wanted";
  /** The exact answer rounded, halves up, to the digits the claim was written to. */
  readonly rounded: string;
  readonly exact: string;
  /** The slips that give the claim, each alone, the likeliest first; several are a tie. */
  readonly slips: readonly FoundSlip[];
  /** What would tell tied slips apart; null where there is no tie. */
  readonly tellApart: string | null;
  /** What the wrong number costs in the input the formula names: "finished length about 1/4 in short". */
  readonly cost: string | null;
  /** Slips that this check cannot see, because to these digits they give the right answer. */
  readonly unseen: readonly FoundSlip[];
}
