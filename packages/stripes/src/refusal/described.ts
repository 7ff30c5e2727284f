const LONGEST = 40;

/** A received value in a few words, short enough for one line of an error. */
export function described(value: unknown): string {
  if (value === undefined || value === null) return "nothing";
  if (typeof value === "string") return JSON.stringify(value.length > LONGEST ? `${value.slice(0, LONGEST)}…` : value);
  if (Array.isArray(value)) return `a list of ${value.length}`;
  return typeof value === "number" ? String(value) : typeof value;
}
