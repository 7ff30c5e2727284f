import type { RefusalCode } from "@thrum/maths";
import { wrongKind } from "./wrong-kind.js";

/** One thing wrong in a job file: where it stands and what to write instead. */
export interface JobFault {
  /** Why, in the words of the refusals of the maths. */
  readonly code: RefusalCode;
  /** Line of the file, from 1. */
  readonly line: number;
  /** Path of the value, such as `pieces.hemEachEnd` or `stripes[2].ends`. */
  readonly path: string;
  readonly expected: string;
  readonly received: string;
  readonly remedy: string;
}

function isFault(value: unknown): value is JobFault {
  if (typeof value !== "object" || value === null) return false;
  const { code, line, path, expected, received, remedy } = value as Readonly<Record<string, unknown>>;
  return Number.isInteger(line) && [code, path, expected, received, remedy].every((text) => typeof text === "string");
}

/**
 * A fault in one sentence, for a screen.
 *
 * @param fault one of those `readJob` gives
 * @throws QuantityError for anything else
 */
export function faultText(fault: JobFault): string {
  const given: unknown = fault;
  if (!isFault(given)) {
    throw wrongKind("faultText(fault)", "a fault of a job file", given, "Give one of the faults that readJob found.");
  }
  const { line, path, expected, received, remedy } = given;
  const place = path === "" ? `line ${String(line)}` : `line ${String(line)}, ${path}`;
  return `${place}: expected ${expected}, received ${received}. ${remedy}`.trimEnd();
}
