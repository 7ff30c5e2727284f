import { law, upTo } from "#ci/law.js";
import { expect, test } from "vitest";
import { pairPreview } from "../pairs/pair-preview.js";
import { everyEnd } from "../sequence/every-end.js";
import type { Sequence } from "../sequence/sequence.js";
import { draws } from "./draws.js";
import { randomOrder } from "./random-order.js";

// Worked out by another program, in another language, from the published definition of the generator on 64-bit words.

const letters = (sequence: Sequence<string>): string => everyEnd(sequence).join("");
const limits = (colour: string, atLeast: number, atMost: number) => ({ colour, atLeast, atMost });

test("law 29: a seed draws the same numbers everywhere", () => {
  const first = (count: number, seed: number, below: number): number[] => {
    const draw = draws(seed);
    return Array.from({ length: count }, () => draw(below));
  };
  expect(first(12, 1, 100)).toEqual([40, 58, 97, 90, 75, 13, 66, 9, 70, 3, 19, 21]);
  expect(first(20, 2026, 6)).toEqual([3, 0, 1, 5, 1, 3, 1, 3, 3, 1, 4, 1, 0, 4, 1, 2, 4, 2, 3, 3]);
});

test("law 29: a seed gives the same order of pairs everywhere", () => {
  const pairs = (seed: number, times: number, outOf: number): string =>
    letters(pairPreview({ seed, pairs: 12, lead: { times, outOf }, first: "A", second: "B" }));
  expect(pairs(3, 1, 2)).toBe("BAABBABAABBABAABABABABAB");
  expect(pairs(7, 9, 10)).toBe("ABABABABABABABABABABABAB");
});

test("law 29: a seed gives the same random order everywhere", () => {
  const two = [limits("A", 10, 30), limits("B", 10, 30)];
  const three = [limits("A", 5, 20), limits("B", 5, 20), limits("C", 3, 6)];
  expect(letters(randomOrder({ seed: 7, ends: 40, colours: two, longestRun: 3 }))).toBe(
    "ABAAABBABAAABABABAAABABAABABABBABAAABAAA",
  );
  expect(letters(randomOrder({ seed: 11, ends: 30, colours: three, longestRun: 2 }))).toBe(
    "BCBACACBBAABAACABBABBCABBCABBA",
  );
});

law(29, "the same seed and limits give the same order every time", [upTo(4_294_967_295), upTo(40)], (seed, more) => {
  const random = (): string =>
    letters(randomOrder({ seed, ends: more + 2, colours: [limits("A", 1, 42), limits("B", 1, 42)], longestRun: 42 }));
  expect(random()).toBe(random());
  const pairs = (): string =>
    letters(pairPreview({ seed, pairs: more + 1, lead: { times: 2, outOf: 3 }, first: "A", second: "B" }));
  expect(pairs()).toBe(pairs());
});
