import { shownText } from "../text/clean.js";
import type { JobFault } from "./fault.js";

export type Place = readonly (string | number)[];

/** A fault of a job before it is known on which line of a file it stands, or whether there is a file. */
export type PlacedFault = Omit<JobFault, "line" | "path"> & { readonly path: Place };

/** A path as one writes it: `stripes[2].ends`. */
export function pathText(path: Place): string {
  const steps = path.map((key) => (typeof key === "number" ? `[${String(key)}]` : `.${shownText(key)}`));
  return steps.join("").replace(/^\./u, "");
}

/** What stood there, in a few words. */
export function receivedText(value: unknown): string {
  if (value === undefined || value === null) return "nothing";
  if (typeof value === "string") return `"${shownText(value)}"`;
  if (typeof value === "number" || typeof value === "boolean") return String(value);
  if (Array.isArray(value)) return `a list of ${String(value.length)}`;
  if (typeof value !== "object") return `a ${typeof value}`;
  const { value: amount, unit } = value as Readonly<Record<string, unknown>>;
  return typeof amount === "string" && typeof unit === "string"
    ? `${shownText(amount)} ${shownText(unit)}`
    : "a group of keys";
}
