import { expect, it } from "vitest";
import { tally } from "./tally.mjs";

const file = (...statuses: string[]): object => ({
  status: statuses.includes("failed") ? "failed" : "passed",
  assertionResults: statuses.map((status) => ({ status })),
});

it("counts tests over all files and leaves out a count of none skipped", () => {
  expect(tally([file("passed", "passed"), file("passed")], { ranToTheEnd: true })).toBe("3 passed, 0 failed");
});

it("counts tests that were not run, whatever the reason", () => {
  expect(tally([file("passed", "pending", "todo", "skipped")], { ranToTheEnd: true })).toBe(
    "1 passed, 0 failed, 3 skipped",
  );
});

it("counts a file that could not be read as a failed test", () => {
  const unreadable = { status: "failed", assertionResults: [] };
  expect(tally([file("passed"), unreadable], { ranToTheEnd: false })).toBe("1 passed, 1 failed");
});

it("counts a failed preparation, which leaves the tests of its file unrun", () => {
  const unprepared = { status: "failed", assertionResults: [{ status: "skipped" }, { status: "skipped" }] };
  expect(tally([unprepared], { ranToTheEnd: false })).toBe("0 passed, 1 failed, 2 skipped");
});

it("never reports a clean tally for a run that ended badly", () => {
  expect(tally([file("passed")], { ranToTheEnd: false })).toBe("1 passed, 1 failed");
  expect(tally([], { ranToTheEnd: false })).toBe("0 passed, 1 failed");
});
