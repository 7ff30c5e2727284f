import type { Run } from "../engine/formula/index.js";

const ROUNDED: Readonly<Record<string, string>> = {
  roundUp: "rounded up",
  roundDown: "rounded down",
  nearest: "to the nearest",
};

/** How to write the answer: a count as the formula rounds it, a measure to so many decimals. */
export function roundingOf({ declared }: Run, decimals: number): string {
  const { what, noun } = declared.result;
  const op = declared.lines.at(-1)?.tree.op ?? "";
  if (what === "whole") return `in whole ${noun} only${ROUNDED[op] === undefined ? "" : `, ${ROUNDED[op]}`}`;
  if (decimals === 0) return "to a whole number, halves up";
  return `to ${String(decimals)} ${decimals === 1 ? "decimal" : "decimals"}, halves up`;
}
