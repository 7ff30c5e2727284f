import { checked, refused } from "./checked-job.js";
import type { JobReading } from "./checked-job.js";
import { yamlNode } from "./yaml-node.js";

const LONGEST = 100_000;

/**
 * Reads a job file: YAML 1.2, and so JSON too.
 *
 * @param text the whole file
 * @returns the job with what is told of it, or all its faults at once, each with its line and what to write instead
 */
export function readJob(text: unknown): JobReading {
  const whole = { path: [], line: 1, params: {} };
  if (typeof text !== "string") {
    return refused("readJob", [
      {
        ...whole,
        code: "wrong-kind",
        expected: "the text of a job file",
        received: `a ${typeof text}`,
        remedy: "Read the file as text first.",
      },
    ]);
  }
  if (text.length > LONGEST) {
    const expected = `a job file of at most ${String(LONGEST)} characters`;
    return refused("readJob", [
      {
        ...whole,
        code: "too-long",
        expected,
        received: `${String(text.length)} characters`,
        remedy: "Is it a job file?",
        params: { atMost: LONGEST },
      },
    ]);
  }
  const { node, faults } = yamlNode(text);
  return node.kind === "nothing" && faults.length > 0 ? refused("readJob", faults) : checked("readJob", node, faults);
}
