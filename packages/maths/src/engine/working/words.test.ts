import { expect, it } from "vitest";
import { inWords } from "./words.js";

it.each([
  ["ends", "ends"],
  ["finishedLength", "finished length"],
  ["grainsPer20Yards", "grains per 20 yards"],
  ["alloaOf240", "alloa of 240"],
  ["takeUp", "take-up"],
  ["count.mass", "count mass"],
])("%s is read as %s", (name, words) => {
  expect(inWords(name)).toBe(words);
});
