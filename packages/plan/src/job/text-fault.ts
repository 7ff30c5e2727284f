import type { Fault } from "./fault.js";

type TextFault = Omit<Fault, "function">;

/**
 * Why this cannot be read at all: it is no text, or longer than any such text; null where it can.
 *
 * @param given anything
 * @param what it should be: "the text of a job file"
 * @param longest how many characters it may have
 */
export function textFault(given: unknown, what: string, longest: number): TextFault | null {
  const whole = { path: [], line: 1, expected: `${what}, at most ${String(longest)} characters` };
  if (given === undefined || given === null)
    return { ...whole, code: "missing", received: "nothing", remedy: "Read the file as text first.", params: {} };
  if (typeof given !== "string") {
    const received = Array.isArray(given) ? "a list" : typeof given === "object" ? "an object" : `a ${typeof given}`;
    return { ...whole, code: "wrong-kind", received, remedy: "Read the file as text first.", params: { kind: "text" } };
  }
  if (given.length <= longest) return null;
  const received = `${String(given.length)} characters`;
  return { ...whole, code: "too-long", received, remedy: "Is it the right file?", params: { atMost: longest } };
}
