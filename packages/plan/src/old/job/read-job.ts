import { LineCounter, parseDocument, visit } from "yaml";
import type { Document } from "yaml";
import { shownText } from "../text/clean.js";
import type { JobFault } from "./fault.js";
import { frozen } from "./frozen.js";
import { rememberChecked } from "./checked-jobs.js";
import { checkedJob } from "./job-faults.js";
import type { Job } from "./job.js";
import { keyText, lineFinder } from "./line-finder.js";
import { pathText, receivedText } from "./placed-fault.js";
import { jobSchema } from "./schema.js";
import { writtenAmounts } from "./written-amounts.js";

/** A job, or everything that is wrong with it. */
export type JobReading =
  { readonly ok: true; readonly job: Job } | { readonly ok: false; readonly faults: readonly JobFault[] };

const LONGEST = 100_000;
const WRITTEN = jobSchema(writtenAmounts);

/** What the parser could not read or did not know; one slip may upset it in many places, so each line is told once. */
function parserFaults({ errors, warnings }: Document, lines: LineCounter): readonly JobFault[] {
  const faults = [...errors, ...warnings].map(({ message, pos }): JobFault => {
    const [first = ""] = message.split("\n");
    const received = first.startsWith("Maximum call stack") ? "groups within groups without end" : shownText(first);
    const line = lines.linePos(pos[0]).line;
    return { code: "unreadable", line, path: "", expected: "plain YAML, or JSON", received, remedy: "" };
  });
  const toldLines = new Set<number>();
  return faults.filter(({ line }) => !toldLines.has(line) && toldLines.add(line));
}

/** Keys written twice in one part; the parser itself takes far longer to find them than to read the file. */
function doubledKeys(document: Document, lines: LineCounter): readonly JobFault[] {
  const faults: JobFault[] = [];
  visit(document, {
    Map: (_, { items }) => {
      const seen = new Set<string>();
      for (const { key } of items) {
        const name = keyText(key);
        const line = lines.linePos((key as { range?: readonly number[] }).range?.[0] ?? 0).line;
        const received = `${shownText(name)} once more`;
        if (seen.has(name))
          faults.push({
            code: "unreadable",
            line,
            path: "",
            expected: "every key once",
            received,
            remedy: "Keep one.",
          });
        seen.add(name);
      }
    },
  });
  return faults;
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
  const document = parseDocument(text, { lineCounter: lines, version: "1.2", uniqueKeys: false });
  const unreadable = parserFaults(document, lines);
  if (unreadable.length > 0) return refuse(...unreadable);
  const unclear = [...aliasFaults(document, lines), ...doubledKeys(document, lines)];
  if (unclear.length > 0) return refuse(...unclear);
  const checked = checkedJob(WRITTEN, document.toJS());
  if (checked.ok) {
    rememberChecked(checked.job);
    return frozen({ ok: true, job: checked.job });
  }
  const lineOf = lineFinder(document, lines);
  const faults = checked.faults.map(({ path, ...fault }) => ({
    line: lineOf(path),
    path: pathText(path),
    ...fault,
  }));
  return refuse(...faults.sort((a, b) => a.line - b.line));
}
