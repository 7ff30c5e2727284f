/** Why something was refused. The set is closed: a program may switch on it. */
export type RefusalCode =
  | "missing"
  | "unknown-field"
  | "wrong-kind"
  | "not-a-number"
  | "not-whole"
  | "out-of-range"
  | "empty"
  | "copied-quantity"
  | "not-a-quantity"
  | "unknown-unit"
  | "unreadable"
  | "ambiguous"
  | "operator"
  | "no-answer";

/** One thing wrong: where it stands, what belongs there, what stood there, and what to do. */
export interface Fault {
  readonly code: RefusalCode;
  readonly where: string;
  readonly expected: string;
  readonly received: string;
  readonly remedy: string;
}

function sentence({ where, expected, received, remedy }: Fault): string {
  return `${where}: expected ${expected}, received ${received}. ${remedy}`.trimEnd();
}

/** The one error this library throws. It lists every fault it found; its own code, path and texts are those of the first. */
export class QuantityError extends Error {
  override readonly name = "QuantityError";
  readonly faults: readonly Fault[];
  readonly code: RefusalCode;
  readonly where: string;
  readonly expected: string;
  readonly received: string;
  readonly remedy: string;

  constructor(first: Fault, ...others: readonly Fault[]) {
    super([first, ...others].map(sentence).join("\n"));
    this.faults = Object.freeze([first, ...others]);
    this.code = first.code;
    this.where = first.where;
    this.expected = first.expected;
    this.received = first.received;
    this.remedy = first.remedy;
  }
}

/** What a reader that does not throw gives back. */
export type Reading<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly faults: readonly Fault[] };

/** The non-throwing twin of a reader: our refusals become data, any other error stays an error. */
export function reading<T>(read: () => T): Reading<T> {
  try {
    return { ok: true, value: read() };
  } catch (error) {
    if (error instanceof QuantityError) return { ok: false, faults: error.faults };
    throw error;
  }
}
