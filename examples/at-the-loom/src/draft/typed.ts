import type { WrittenValue } from "@thrum/plan";
import { writtenText, writtenValue } from "@thrum/plan";

/** Keys whose value is a list, or may be one: what is typed there is read as one. */
const LISTS = ["stripes", "sley", "threading", "faults", "pieces", "extra", "sold", "heddles"];

/** What is typed as the value that it stands for in the job file; null where nothing is. */
export function valueOf(path: string, typed: WrittenValue | null): WrittenValue | null {
  if (typed === null || typeof typed !== "string") return typed;
  if (typed.trim() === "") return null;
  const key = /[^.[\]]+$/u.exec(path.replace(/\[\d+\]$/u, ""))?.[0] ?? "";
  const isList = LISTS.includes(key) || path === "oldWarp.yarn";
  return isList ? (writtenValue(typed) ?? typed) : typed.trim();
}

/** A value as it is typed. */
export function typedText(value: WrittenValue | null): string {
  return value === null ? "" : writtenText(value);
}
