import { refusalOf } from "#ci/refusal-of.js";
import { expect, test } from "vitest";
import * as stripes from "../index.js";
import { described } from "./described.js";

const functions = Object.entries(stripes as unknown as Record<string, (input: unknown) => unknown>).filter(
  ([name, value]) => typeof value === "function" && name !== "StripeError" && name !== "attempt",
);

test.each(functions)("%s says its own name where it refuses", (name, called) => {
  const { message, faults } = refusalOf(() => called(null));
  expect(message.startsWith(`${name}(`)).toBe(true);
  expect(faults).not.toHaveLength(0);
});

test.each([
  [undefined, "nothing"],
  [null, "nothing"],
  [2.5, "2.5"],
  [[1, 2], "a list of 2"],
  [{}, "object"],
  ["ash", '"ash"'],
  ["x".repeat(41), `"${"x".repeat(40)}…"`],
])("what was received is told in a few words: %j", (value, words) => {
  expect(described(value)).toBe(words);
});
