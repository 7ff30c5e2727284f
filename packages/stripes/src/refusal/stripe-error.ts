/** Why an input was refused; the list is closed. */
export type StripeErrorCode =
  | "missing"
  | "unknown-field"
  | "wrong-kind"
  | "not-whole"
  | "out-of-range"
  | "empty"
  | "not-a-sequence"
  | "unreadable"
  | "unknown-letter"
  | "too-long"
  | "does-not-fit"
  | "not-symmetrical"
  | "odd-pivot"
  | "unsafe-text";

/** One thing wrong with an input. */
export interface StripeFault {
  readonly code: StripeErrorCode;
  /** The field, and the place in it: `stripes[2].ends`. */
  readonly where: string;
  /** The character of a text, counted from 1; null where no text was read. */
  readonly position: number | null;
  readonly expected: string;
  readonly received: string;
  readonly remedy: string;
}

/** A refused input: the first fault in its own fields, every fault in `faults` and in the message. */
export class StripeError extends Error implements StripeFault {
  override readonly name = "StripeError";
  declare readonly code: StripeErrorCode;
  declare readonly where: string;
  declare readonly position: number | null;
  declare readonly expected: string;
  declare readonly received: string;
  declare readonly remedy: string;
  readonly faults: readonly StripeFault[];

  constructor(refusedBy: string, faults: readonly StripeFault[]) {
    super(
      faults
        .map(
          ({ where, expected, received, remedy }) =>
            `${refusedBy}({ ${where} }): expected ${expected}, received ${received}. ${remedy}`,
        )
        .join("\n"),
    );
    this.faults = faults;
    Object.assign(this, faults[0]);
  }
}
