import { describe, expect, it } from "vitest";
import { exampleNames, exampleText, jobIn } from "#ci/example-jobs.js";
import { jobText } from "./job-text.js";
import { checkedJob } from "./checked-job.js";
import { readJob } from "./read-job.js";
import { newJob } from "./new-job.js";

describe("the nine jobs", () => {
  it.each(exampleNames)("%s is read, written and read again as the same job", (name) => {
    const job = jobIn(exampleText(name));
    const text = jobText(job);
    expect(jobIn(text)).toEqual(job);
    expect(jobText(jobIn(text))).toBe(text);
    expect(checkedJob(job)).toEqual({ ok: true, value: job, told: [] });
  });
});

describe("the job to fill in", () => {
  it("is the hall napkins, with a remark on every line but runs and blank ones", () => {
    expect(jobIn(newJob())).toEqual(jobIn(exampleText("2-hall-napkins")));
    const bare = newJob()
      .split("\n")
      .filter((line) => line !== "" && !line.includes("# "));
    for (const line of bare) expect(line).toMatch(/^(?: {2,6}- \d+ | {8}of: | {2}(?:natural|madder|indigo): )/u);
  });
});

describe("a job checked before", () => {
  it("is taken as it is, for nothing in it can be changed; a copy of it is checked again", () => {
    const reading = readJob("stripes: [24 oat]\ncloth: { sett: 16 per inch }\n");
    if (!reading.ok) throw new Error("it reads");
    const again = checkedJob(reading.value);
    expect(again.ok && again.value).toBe(reading.value);
    expect(() => Object.assign(reading.value.cloth ?? {}, { sett: "16" })).toThrow("read only property 'sett'");
    expect(checkedJob({ ...reading.value, cloth: { sett: "16" } }).ok).toBe(false);
  });
});
