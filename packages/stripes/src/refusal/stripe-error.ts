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
export class StripeError extends Error {
  override readonly name = "StripeError";
  readonly code: StripeErrorCode;
  readonly where: string;
  readonly position: number | null;
  readonly expected: string;
  readonly received: string;
  readonly remedy: string;
  readonly faults: readonly StripeFault[];

  constructor(refusedBy: string, faults: readonly [StripeFault, ...StripeFault[]]) {
    super(faults.map((fault) => sentence(refusedBy, fault)).join("\n"));
    const [first] = faults;
    this.code = first.code;
    this.where = first.where;
    this.position = first.position;
    this.expected = first.expected;
    this.received = first.received;
    this.remedy = first.remedy;
    this.faults = faults;
  }
}

function sentence(refusedBy: string, fault: StripeFault): string {
  const place = fault.position === null ? "" : ` at character ${fault.position}`;
  return `${refusedBy}({ ${fault.where} })${place}: expected ${fault.expected}, received ${fault.received}. ${fault.remedy}`;
}
