import type { Fault } from "../job/fault.js";
import { printable } from "../job/fault.js";
import { frozen } from "../job/frozen.js";
import { placeIn } from "../job/place-in.js";
import { yamlText } from "../job/yaml-lines.js";
import { yamlNode } from "../job/yaml-node.js";
import { beyondTheLast } from "./beyond-the-last.js";
import { progressForm } from "./progress.js";
import type { Progress } from "./progress.js";

/** How far the work is, or everything that is wrong with the file. */
export type ProgressReading =
  { readonly ok: true; readonly progress: Progress } | { readonly ok: false; readonly faults: readonly Fault[] };

const LONGEST = 500_000;
const LONGEST_SENTENCE = 1000;

/**
 * Reads a progress file.
 *
 * @param text the whole file
 * @returns how far the work is, or all faults at once; a tick beyond the last group or chain it names is one
 */
export function readProgress(text: unknown): ProgressReading {
  const faults: Fault[] = [];
  const clean = (words: string): string => printable(words, LONGEST_SENTENCE);
  const tell = ({ expected, received, remedy, ...fault }: Omit<Fault, "function">): void => {
    const sentence = { expected: clean(expected), received: clean(received), remedy: clean(remedy) };
    faults.push({ ...fault, function: "readProgress", ...sentence });
  };
  if (typeof text !== "string" || text.length > LONGEST) {
    const received = typeof text === "string" ? `${String(text.length)} characters` : `a ${typeof text}`;
    const expected = `the text of a progress file, at most ${String(LONGEST)} characters`;
    tell({ code: "wrong-kind", path: [], expected, received, remedy: "Read the file as text first.", params: {} });
    return frozen({ ok: false, faults });
  }
  const { node, faults: unreadable } = yamlNode(text);
  unreadable.forEach(tell);
  const progress = node.kind === "nothing" && faults.length > 0 ? null : progressForm.read(node, { path: [], tell });
  if (progress === null && faults.length === 0) {
    tell({
      code: "missing",
      path: ["job"],
      expected: "the name of the job file",
      received: "nothing",
      remedy: "Add job.",
      params: {},
    });
  }
  const beyond = progress === null ? [] : beyondTheLast(progress, progress.groups?.length, progress.chains?.length);
  for (const { path, ...fault } of beyond) tell({ ...fault, ...placeIn(node, path) });
  return frozen(progress === null || faults.length > 0 ? { ok: false, faults } : { ok: true, progress });
}

/**
 * How far the work is, as the text of a progress file; what is read from it is the same.
 *
 * @param progress such as `readProgress` gives, with other ticks
 */
export function progressText(progress: Progress): string {
  return yamlText(progressForm.write(progress));
}
