import { missingOr, refuse } from "../refusal.js";
import type { Place } from "../refusal.js";
import { described } from "./described.js";

/** Refuses what is no list, and a list with nothing in it. */
export function requireList(
  where: Place,
  given: unknown,
  expected: string,
  remedy: string,
): asserts given is readonly unknown[] {
  if (Array.isArray(given) && given.length > 0) return;
  refuse(Array.isArray(given) ? "empty" : missingOr(given, "wrong-kind"), where, expected, described(given), remedy);
}
