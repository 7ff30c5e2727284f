const SHOWN_LENGTH = 40;

function clean(text: string): string {
  const printable = text.slice(0, SHOWN_LENGTH).replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu, "�");
  return text.length > SHOWN_LENGTH ? `${printable}…` : printable;
}

/** Percentages by their base, as one says them. */
const PERCENT: ReadonlyMap<string, string> = new Map([
  ["loss", "lost"],
  ["addition", "added"],
  ["share", "of a whole"],
]);

/** The symbol of a unit, and the base of a percentage behind it: "in", "% lost". */
export function toldAs({ symbol, dimension }: { readonly symbol: string; readonly dimension: string }): string {
  const base = PERCENT.get(dimension);
  return base === undefined ? symbol : `${symbol} ${base}`;
}

/** What was received, in a few words fit for any screen: never longer than a line, never a control character. */
export function described(value: unknown): string {
  if (value === undefined || value === null) return "nothing";
  if (typeof value === "string") return `the text "${clean(value)}"`;
  if (typeof value === "number") return `the number ${String(value)}`;
  if (typeof value === "function" && "scale" in value) return `the unit ${clean(value.name)}`;
  if (typeof value === "function") return value.name ? `the function ${clean(value.name)}` : "a function";
  if (Array.isArray(value)) return `a list of ${String(value.length)}`;
  if (typeof value !== "object") return `a ${typeof value}`;
  const { dimension, value: amount, unit } = value as Record<string, unknown>;
  if (typeof dimension === "string" && typeof amount === "string" && typeof unit === "string") {
    const base = PERCENT.get(dimension);
    return base === undefined ? `${clean(dimension)} ${clean(amount)} ${clean(unit)}` : `${clean(amount)} % ${base}`;
  }
  return "an object";
}
