import { centimetres, faultText as amountFault, inches, lengthReading } from "@thrum/maths";
import type { Length } from "@thrum/maths";
import { jobTextWith, faultText, readJob, writtenValue } from "@thrum/plan";
import type { WrittenValue } from "@thrum/plan";
import type { Was } from "../keep/records.js";

export type Answer<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly says: string };

/** A length as she writes it. */
export function reading(text: string, locale: string): Answer<Length> {
  const read = lengthReading(text, [inches, centimetres], { locale });
  return read.ok ? { ok: true, value: read.value } : { ok: false, says: read.faults.map(amountFault).join(" ") };
}

/** The job with one value changed, if it still reads; else what is wrong with the value. */
export function jobWith(text: string, path: readonly (string | number)[], value: WrittenValue | null): Answer<string> {
  const changed = jobTextWith(text, [{ path, value }]);
  const read = readJob(changed);
  return read.ok ? { ok: true, value: changed } : { ok: false, says: read.faults.map(faultText).join(" ") };
}

/** What was found, as it stands in the job: kept for undo. */
export function foundIn(text: string): string {
  const written = writtenValue(text);
  const found =
    typeof written === "object" && written !== null && !Array.isArray(written)
      ? (Object.entries(written).find(([key]) => key === "found")?.[1] ?? null)
      : null;
  return JSON.stringify(found);
}

/** The job with what was found as it stood before. */
export function withFound(text: string, found: string): string {
  return jobTextWith(text, [{ path: ["found"], value: JSON.parse(found) as WrittenValue | null }]);
}

const inGroup = (value: WrittenValue | null, key: string): WrittenValue | null =>
  typeof value === "object" && value !== null && !Array.isArray(value)
    ? (Object.entries(value).find(([name]) => name === key)?.[1] ?? null)
    : null;
const valueAt = (text: string, path: readonly string[]): WrittenValue | null =>
  path.reduce<WrittenValue | null>(inGroup, writtenValue(text));

/** What stands at a place of the job: kept for undo. */
export const valueIn = (text: string, path: readonly string[]): Was => ({
  path,
  value: JSON.stringify(valueAt(text, path)),
});

/** The job with what stood there before. */
export function withValue(text: string, { path, value }: Was): string {
  return jobTextWith(text, [{ path, value: JSON.parse(value) as WrittenValue | null }]);
}

/** The job with one more fault of the old warp, if it still reads. */
export function withFault(text: string, fault: WrittenValue): Answer<string> {
  const faults = valueAt(text, ["oldWarp", "faults"]);
  return jobWith(
    text,
    ["oldWarp", "faults"],
    [...(Array.isArray(faults) ? (faults as readonly WrittenValue[]) : []), fault],
  );
}

/** The picks found in the first inches, as they are written; null where none are. */
export function foundPicks(text: string): string | null {
  const picks = valueAt(text, ["found", "firstInches", "picks"]);
  return typeof picks === "string" ? picks : null;
}
