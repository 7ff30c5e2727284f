import { LineCounter, parseDocument, visit } from "yaml";
import type { Document } from "yaml";
import { shownText } from "../text/clean.js";
import type { JobFault } from "./fault.js";
import { frozen } from "./frozen.js";
import { rememberChecked } from "./checked-jobs.js";
import { checkedJob } from "./job-faults.js";
import type { Job } from "./job.js";
import { pathText, receivedText } from "./placed-fault.js";
import type { Place } from "./placed-fault.js";
import { jobSchema } from "./schema.js";
import { writtenAmounts } from "./written-amounts.js";

/** A job, or everything that is wrong with it. */
export type JobReading =
  { readonly ok: true; readonly job: Job } | { readonly ok: false; readonly faults: readonly JobFault[] };

const LONGEST = 100_000;
const WRITTEN = jobSchema(writtenAmounts);

/** The line of the nearest thing on the path that stands in the file. */
function lineOf(document: Document, lines: LineCounter, path: Place): number {
  for (let length = path.length; length >= 0; length--) {
    const node: unknown = length === 0 ? document.contents : document.getIn(path.slice(0, length), true);
    const range = (node as { range?: readonly number[] | null } | null | undefined)?.range;
    if (range?.[0] !== undefined) return lines.linePos(range[0]).line;
  }
  return 1;
}

/** What the parser could not read or did not know; one slip may upset it in many places, so each line is told once. */
function parserFaults({ errors, warnings }: Document, lines: LineCounter): readonly JobFault[] {
  const faults = [...errors, ...warnings].map(({ message, pos }): JobFault => {
    const [first = ""] = message.split("\n");
    const received = first.startsWith("Maximum call stack") ? "groups within groups without end" : shownText(first);
    const line = lines.linePos(pos[0]).line;
    return { code: "unreadable", line, path: "", expected: "plain YAML, or JSON", received, remedy: "" };
  });
  return faults.filter(({ line }, at) => faults.findIndex((other) => other.line === line) === at);
}

/** References to other parts of the file could make it grow without end, and hide what a reader sees. */
function aliasFaults(document: Document, lines: LineCounter): readonly JobFault[] {
  const faults: JobFault[] = [];
  visit(document, {
    Alias: (_, { range, source }) => {
      const line = lines.linePos(range?.[0] ?? 0).line;
      const expected = "every value written out";
      const received = `a reference to ${shownText(source)}`;
      faults.push({ code: "unreadable", line, path: "", expected, received, remedy: "Write the value again." });
    },
  });
  return faults;
}

/**
 * Reads a job file: YAML 1.2, and so JSON too.
 *
 * @param text the whole file
 * @returns the job, or all its faults at once, each with its line and what to write instead
 */
export function readJob(text: unknown): JobReading {
  const refuse = (...faults: readonly JobFault[]): JobReading => frozen({ ok: false, faults });
  const whole = { line: 1, path: "" };
  const kind = { ...whole, code: "wrong-kind" } as const;
  if (typeof text !== "string") {
    const remedy = "Read the file as text first.";
    return refuse({ ...kind, expected: "the text of a job file", received: receivedText(text), remedy });
  }
  if (text.length > LONGEST) {
    const expected = `a job file of at most ${String(LONGEST)} characters`;
    return refuse({
      ...whole,
      code: "out-of-range",
      expected,
      received: `${String(text.length)} characters`,
      remedy: "",
    });
  }
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, version: "1.2", uniqueKeys: true });
  const unreadable = parserFaults(document, lines);
  if (unreadable.length > 0) return refuse(...unreadable);
  const aliases = aliasFaults(document, lines);
  if (aliases.length > 0) return refuse(...aliases);
  const checked = checkedJob(WRITTEN, document.toJS());
  if (checked.ok) {
    rememberChecked(checked.job);
    return frozen({ ok: true, job: checked.job });
  }
  const faults = checked.faults.map(({ path, ...fault }) => ({
    line: lineOf(document, lines, path),
    path: pathText(path),
    ...fault,
  }));
  return refuse(...faults.sort((a, b) => a.line - b.line));
}
