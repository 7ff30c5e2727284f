import type { Form } from "./form.js";
import type { Measured } from "./run-size.js";

/** What there is of one kind of run. */
export interface RunKind<Run> {
  readonly noun: string;
  readonly run: Form<Run>;
  readonly isOpen: (run: Run) => boolean;
  readonly measured: Measured<Run>;
  /** Whether it can stand among others: a weft without a number is all of the piece. */
  readonly standsAlone?: (run: Run) => boolean;
}
