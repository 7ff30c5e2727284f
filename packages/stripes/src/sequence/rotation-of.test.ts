import fc from "fast-check";
import { expect, test } from "vitest";
import { rotationOf } from "./rotation-of.js";

const same = (one: string, other: string): boolean => one === other;

/** The same by trying every rotation in turn. */
function tried(from: readonly string[], to: readonly string[]): number | null {
  const found = from.findIndex((_, by) => [...from.slice(by), ...from.slice(0, by)].join("") === to.join(""));
  return found < 0 || from.length !== to.length ? null : found;
}

test("the least rotation is the one found by trying them all, where groups repeat within groups too", () => {
  const letters = fc.string({ unit: fc.constantFrom("a", "b"), minLength: 1, maxLength: 9 });
  const turned = fc.tuple(letters, fc.nat(8)).map(([text, by]) => [text, text.slice(by) + text.slice(0, by)] as const);
  fc.assert(
    fc.property(fc.oneof(turned, fc.tuple(letters, letters)), ([from, to]) => {
      expect(rotationOf(Array.from(from), Array.from(to), same)).toBe(tried(Array.from(from), Array.from(to)));
    }),
    { numRuns: 3000 },
  );
});

test("a word is no rotation of one with the same letters in another order", () => {
  expect(rotationOf(["a", "b", "c"], ["a", "c", "b"], same)).toBeNull();
});
