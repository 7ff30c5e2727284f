import { inches, percentLost } from "@thrum/maths";
import { expect, it } from "vitest";
import { exampleNames, exampleText, jobIn } from "#ci/example-jobs.js";
import { jobTextWith } from "./job-text-with.js";
import type { Job } from "./job.js";
import { newJob } from "./new-job.js";

/** The lines that the change took away, and those it brought. */
function changedLines(before: string, after: string): readonly [readonly string[], readonly string[]] {
  const [was, now] = [before.split("\n"), after.split("\n")];
  return [was.filter((line) => !now.includes(line)), now.filter((line) => !was.includes(line))];
}

it("a job that is not changed leaves every file as it was written", () => {
  const files = exampleNames.map(exampleText);
  expect(files).toHaveLength(9);
  for (const text of [...files, newJob()]) expect(jobTextWith(text, jobIn(text))).toBe(text);
});

it("a changed value keeps the remark behind it, and every other line as it was", () => {
  const text = newJob();
  const job = jobIn(text);
  const changed = jobTextWith(text, { ...job, cloth: { ...job.cloth, takeUp: { lost: percentLost(7) } } });
  expect(changedLines(text, changed)).toEqual([
    ["  takeUp: 8 % lost # of the thread, wound to weaving tension; or two measures: 21 in to 19 1/2 in"],
    ["  takeUp: 7 % lost # of the thread, wound to weaving tension; or two measures: 21 in to 19 1/2 in"],
  ]);
});

it("a key comes in its place, within brackets and below one another, and goes with its remark", () => {
  const text = newJob();
  const { groups, ...job } = jobIn(text);
  expect(groups).toBe(24);
  const joined: Job = {
    ...job,
    yarns: { ...job.yarns, madder: { ...job.yarns?.["madder"], seen: "#8e3b32" } },
    join: { ...job.join, order: "from the last end" },
    warp: { ...job.warp, length: inches(200) },
  };
  expect(changedLines(text, jobTextWith(text, joined))).toEqual([
    [
      "groups: 24 # ends counted, wound, tied and ticked together; left out, a stripe is a group",
      "  madder: { count: 2-ply of 8 cotton, sold: 8 oz at 15.20 EUR, onHand: none }",
    ],
    [
      '  madder: { count: 2-ply of 8 cotton, sold: 8 oz at 15.20 EUR, onHand: none, seen: "#8e3b32" }',
      "  order: from the last end",
      "  length: 200 in",
    ],
  ]);
});

it("a stripe put in leaves the remarks of the others", () => {
  const text = "stripes: # from end 1\n  - 24 natural # edge\n  - 12 madder # middle\n  - 24 natural # other edge\n";
  const [first, ...others] = jobIn(text).stripes ?? [];
  if (first === undefined) throw new Error("no stripes");
  const changed = jobTextWith(text, { stripes: [first, { ends: 6, yarns: ["indigo"] }, ...others] });
  expect(changed).toBe(text.replace("# edge\n", "# edge\n  - 6 indigo\n"));
});

it("a remark goes before the one that stands there, and takes the place of its own", () => {
  const text = "cloth:\n  takeUp: 8 % lost # measured twice\n";
  const once = jobTextWith(text, jobIn(text), [{ path: ["cloth", "takeUp"], says: "was 9 % lost" }]);
  expect(once).toBe("cloth:\n  takeUp: 8 % lost # was 9 % lost; measured twice\n");
  const twice = jobTextWith(once, jobIn(once), [{ path: ["cloth", "takeUp"], says: "was 8 % lost" }]);
  expect(twice).toBe("cloth:\n  takeUp: 8 % lost # was 8 % lost; measured twice\n");
});

it("a text that is no job is refused with its faults", () => {
  expect(() => jobTextWith("clothes: 8", {})).toThrow(/a key of a job/u);
  expect(jobTextWith("# nothing yet", { title: "Mats" })).toBe("# nothing yet\ntitle: Mats\n");
});
