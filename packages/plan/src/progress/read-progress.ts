import type { Reading, RefusalCode } from "@thrum/maths";
import { placeIn } from "../job/place-in.js";
import { textReading } from "../job/text-reading.js";
import { yamlText } from "../job/yaml-lines.js";
import { yamlNode } from "../job/yaml-node.js";
import { beyondTheLast } from "./beyond-the-last.js";
import { progressForm } from "./progress.js";
import type { Progress } from "./progress.js";

/** How far the work is, or everything that is wrong with the file. */
export type ProgressReading = Reading<Progress, RefusalCode>;

const LONGEST = 500_000;
const NO_JOB = {
  code: "missing",
  path: ["job"],
  expected: "the name of the job file",
  received: "nothing",
  remedy: "Add job.",
  params: {},
  line: 1,
} as const;

/**
 * Reads a progress file.
 *
 * @param text the whole file
 * @returns how far the work is, or all faults at once; a tick beyond the last group or chain it names is one
 */
export function readProgress(text: unknown): ProgressReading {
  return textReading(text, {
    name: "readProgress",
    what: "the text of a progress file",
    longest: LONGEST,
    read: (given, tell) => {
      const { node, faults } = yamlNode(given);
      faults.forEach(tell);
      if (node.kind === "nothing") {
        if (faults.length === 0) tell(NO_JOB);
        return null;
      }
      const progress = progressForm.read(node, { path: [], tell });
      const beyond = progress === null ? [] : beyondTheLast(progress, progress.groups?.length, progress.chains?.length);
      for (const { path, ...fault } of beyond) tell({ ...fault, ...placeIn(node, path) });
      return progress;
    },
  });
}

/**
 * How far the work is, as the text of a progress file; what is read from it is the same.
 *
 * @param progress such as `readProgress` gives, with other ticks
 */
export function progressText(progress: Progress): string {
  return yamlText(progressForm.write(progress));
}
