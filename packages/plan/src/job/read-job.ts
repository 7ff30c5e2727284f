import * as v from "valibot";
import { isCollection, LineCounter, parseDocument, visit } from "yaml";
import type { Document, YAMLError } from "yaml";
import { shownText } from "../text/clean.js";
import type { JobFault } from "./fault.js";
import { nearName } from "./near-name.js";
import { jobSchema } from "./schema.js";
import type { Job } from "./job.js";
import { stripesFaults } from "./stripes.js";

/** A job, or everything that is wrong with it. */
export type JobReading =
  { readonly ok: true; readonly job: Job } | { readonly ok: false; readonly faults: readonly JobFault[] };

type Path = readonly (string | number)[];

const LONGEST = 100_000;

function pathText(path: Path): string {
  const steps = path.map((key) => (typeof key === "number" ? `[${String(key)}]` : `.${shownText(key)}`));
  return steps.join("").replace(/^\./u, "");
}

/** The line of the nearest thing on the path that stands in the file. */
function lineOf(document: Document, lines: LineCounter, path: Path): number {
  for (let length = path.length; length >= 0; length--) {
    const node: unknown = length === 0 ? document.contents : document.getIn(path.slice(0, length), true);
    const range = (node as { range?: readonly number[] | null } | null | undefined)?.range;
    if (range?.[0] !== undefined) return lines.linePos(range[0]).line;
  }
  return 1;
}

function received(value: unknown): string {
  if (value === undefined || value === null) return "nothing";
  if (typeof value === "string") return `"${shownText(value)}"`;
  if (typeof value === "number" || typeof value === "boolean") return String(value);
  return Array.isArray(value) ? `a list of ${String(value.length)}` : "a group of keys";
}

function faultOf(issue: v.BaseIssue<unknown>, document: Document, lines: LineCounter): JobFault {
  const path = (issue.path ?? []).map(({ key }) => key as string | number);
  const place = { line: lineOf(document, lines, path), path: pathText(path) };
  const [expected = "", remedy = ""] = issue.message.split("|");
  if (issue.type !== "strict_object") return { ...place, expected, received: received(issue.input), remedy };
  const last = String(path.at(-1));
  if (issue.expected !== "never") {
    const missing = issue.expected === "Object" ? "a group of keys" : `the key ${last}`;
    return { ...place, expected: missing, received: received(issue.input), remedy: "" };
  }
  const parent = document.getIn(path.slice(0, -1), true);
  const siblings = isCollection(parent) ? namesAt(path.slice(0, -1)) : [];
  const near = nearName(last, siblings);
  const known = siblings.length > 0 ? `one of ${siblings.join(", ")}` : "no such key";
  const meant = near === null ? "Leave it out, or correct its name." : `Was ${near} meant?`;
  return { ...place, expected: known, received: `the key "${shownText(last)}"`, remedy: meant };
}

/** The keys the schema knows at a path; none where it does not tell. */
function namesAt(path: Path): readonly string[] {
  let schema: unknown = jobSchema;
  for (const key of path) {
    const { entries, value } = schema as { entries?: Readonly<Record<string, unknown>>; value?: unknown };
    schema = entries?.[key] ?? value;
    if (schema === undefined) return [];
  }
  return Object.keys((schema as { entries?: object }).entries ?? {});
}

function notYaml({ message, pos }: YAMLError, lines: LineCounter): JobFault {
  const received = shownText(message.split("\n")[0] ?? "");
  return { line: lines.linePos(pos[0]).line, path: "", expected: "YAML, or JSON", received, remedy: "" };
}

/** References to other parts of the file could make it grow without end, and hide what a reader sees. */
function aliasFaults(document: Document, lines: LineCounter): readonly JobFault[] {
  const faults: JobFault[] = [];
  visit(document, {
    Alias: (_, { range, source }) => {
      const line = lines.linePos(range?.[0] ?? 0).line;
      const expected = "every value written out";
      const received = `a reference to ${shownText(source)}`;
      faults.push({ line, path: "", expected, received, remedy: "Write the value again." });
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
  const refuse = (...faults: readonly JobFault[]): JobReading => ({ ok: false, faults });
  const whole = { line: 1, path: "" };
  if (typeof text !== "string") {
    const remedy = "Read the file as text first.";
    return refuse({ ...whole, expected: "the text of a job file", received: received(text), remedy });
  }
  if (text.length > LONGEST) {
    const expected = `a job file of at most ${String(LONGEST)} characters`;
    return refuse({ ...whole, expected, received: `${String(text.length)} characters`, remedy: "" });
  }
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, version: "1.2", uniqueKeys: true });
  const unreadable = [...document.errors.map((error) => notYaml(error, lines)), ...aliasFaults(document, lines)];
  if (unreadable.length > 0) return refuse(...unreadable);
  const parsed = v.safeParse(jobSchema, document.toJS());
  if (!parsed.success) return refuse(...parsed.issues.map((issue) => faultOf(issue, document, lines)));
  const faults = stripesFaults(parsed.output).map(({ path, ...fault }) => ({
    line: lineOf(document, lines, path),
    path: pathText(path),
    ...fault,
  }));
  return faults.length > 0 ? refuse(...faults) : { ok: true, job: parsed.output };
}
