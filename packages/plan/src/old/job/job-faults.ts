import type { RefusalCode } from "@thrum/maths";
import * as v from "valibot";
import { afterFaults } from "./after-faults.js";
import { crossFaults } from "./cross-faults.js";
import type { Job } from "./job.js";
import { receivedText } from "./placed-fault.js";
import type { PlacedFault } from "./placed-fault.js";
import { unknownKeys } from "./unknown-keys.js";

/** A value that is a job, or everything that keeps it from being one. */
export type CheckedJob =
  { readonly ok: true; readonly job: Job } | { readonly ok: false; readonly faults: readonly PlacedFault[] };

const CODES: Readonly<Record<string, RefusalCode>> = {
  raw_transform: "unreadable",
  regex: "unreadable",
  min_length: "empty",
  picklist: "out-of-range",
  literal: "out-of-range",
};

function codeOf({ kind, type, input }: v.BaseIssue<unknown>): RefusalCode {
  if (input === undefined || input === null) return "missing";
  if (Number.isNaN(input)) return "not-a-number";
  return CODES[type] ?? (kind === "schema" ? "wrong-kind" : "out-of-range");
}

function faultOf(issue: v.BaseIssue<unknown>): PlacedFault {
  const { message, type, expected: missing, input } = issue;
  const path = (issue.path ?? []).map(({ key }) => key as string | number);
  const code = codeOf(issue);
  const received = receivedText(input);
  const [expected = "", remedy = ""] = message.split("|");
  if (type !== "object") return { code, path, expected, received, remedy };
  const whole = missing === "Object" ? "a group of keys" : `the key ${String(path.at(-1))}`;
  return { code, path, expected: whole, received, remedy: missing === "Object" ? "" : "Nothing is assumed: state it." };
}

/** Holds a value against the form of a job: its keys, each value, and what no single value can show. */
export function checkedJob(schema: v.GenericSchema<unknown, Job>, value: unknown): CheckedJob {
  const parsed = v.safeParse(schema, value);
  const issues = parsed.success ? [] : parsed.issues.map(faultOf);
  const after = parsed.success ? afterFaults(parsed.output) : [];
  const faults = [...issues, ...unknownKeys(schema, value), ...crossFaults(value), ...after];
  return parsed.success && faults.length === 0 ? { ok: true, job: parsed.output } : { ok: false, faults };
}
