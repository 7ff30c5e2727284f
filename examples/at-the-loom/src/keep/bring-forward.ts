import type { JobRecord, WorkRecord } from "./records.js";

/** A record as it was found: brought forward, or of a newer app, which must not be written over. */
export type Found<T> = { readonly is: "here"; readonly record: T } | { readonly is: "newer" };

type Raw = Readonly<Record<string, unknown>>;

/** One step for each form there has been: from form N, at place N − 1, to form N + 1. */
const WORK: readonly ((old: Raw) => Raw)[] = [];
const JOBS: readonly ((old: Raw) => Raw)[] = [];

function forward<T extends { readonly schema: number }>(
  record: Raw | undefined,
  steps: readonly ((old: Raw) => Raw)[],
  isRecord: (value: Raw) => value is Raw & T,
): Found<T> | null {
  if (record === undefined) return null;
  const schema = Number(record["schema"]);
  if (schema > steps.length + 1) return { is: "newer" };
  const brought = steps.slice(schema - 1).reduce((old, step) => step(old), record);
  return isRecord(brought) ? { is: "here", record: brought } : null;
}

const isText = (value: unknown): boolean => typeof value === "string";
const isObject = (value: unknown): boolean => typeof value === "object" && value !== null;

export const isWork = (value: Raw): value is Raw & WorkRecord =>
  isText(value["job"]) &&
  Number.isInteger(value["seq"]) &&
  isObject(value["progress"]) &&
  isObject(value["here"]) &&
  Array.isArray(value["past"]);

export const isJob = (value: Raw): value is Raw & JobRecord =>
  isText(value["id"]) && isText(value["title"]) && isText(value["text"]) && isObject(value["typed"]);

export const workForward = (record: Raw | undefined): Found<WorkRecord> | null => forward(record, WORK, isWork);
export const jobForward = (record: Raw | undefined): Found<JobRecord> | null => forward(record, JOBS, isJob);
