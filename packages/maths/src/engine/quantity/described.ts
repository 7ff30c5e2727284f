import type { Unit } from "./unit.js";

const SHOWN_LENGTH = 40;

function clean(text: string): string {
  const printable = text.slice(0, SHOWN_LENGTH).replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu, "�");
  return text.length > SHOWN_LENGTH ? `${printable}…` : printable;
}

/** What the percentages of each kind are taken of, known once their unit is made: a copy of one is only data and has no unit. */
const BASES = /* @__PURE__ */ new Map<string, string>();

/** Tells what the percentages of a kind are taken of. */
export function setBase(dimension: string, base: string): void {
  BASES.set(dimension, base);
}

/** Whether a unit counts a percentage: its amounts are parts of one, told in hundredths and with what they are taken of. */
export function isPercent(unit: Pick<Unit<string>, "base"> | null): boolean {
  return unit !== null && unit.base !== null;
}

/** The symbol of a unit, and the base of a percentage behind it: "in", "% lost". */
export function toldAs({ symbol, base }: Pick<Unit<string>, "symbol" | "base">): string {
  return base === null ? symbol : `${symbol} ${base}`;
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
    const base = BASES.get(dimension);
    return base === undefined ? `${clean(dimension)} ${clean(amount)} ${clean(unit)}` : `${clean(amount)} % ${base}`;
  }
  return "an object";
}
