// THRUM_RUNS=10000 THRUM_SEED=7 npm test : more examples of every property than the usual hundred, and others.
import { configureGlobal, readConfigureGlobal } from "fast-check";
import { beforeEach, expect } from "vitest";
import { beginsLeaning } from "./leaning.mjs";

/** The whole number of a setting, or what holds without it. */
function setting(name: string, otherwise: number): number {
  const text = process.env[name];
  if (text === undefined) return otherwise;
  const number = Number(text);
  if (!Number.isSafeInteger(number) || number < 1)
    throw new Error(`${name}: expected a whole number, received ${text}`);
  return number;
}

const seed = setting("THRUM_SEED", 20261130);
configureGlobal({ ...readConfigureGlobal(), seed, numRuns: setting("THRUM_RUNS", 100) });

beforeEach(({ task }) => {
  // Thrown, not expected: an expectation here would count as one of the test.
  for (const { name } of [task, ...(task.suite === undefined ? [] : [task.suite])])
    if (beginsLeaning(name)) throw new Error(`a title stands alone: not "${name}"`);
  // A test that asks nothing fails.
  expect.hasAssertions();
});
