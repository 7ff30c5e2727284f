import { readdirSync, readFileSync } from "node:fs";
import { QuantityError } from "@thrum/maths";
import { describe, expect, it } from "vitest";
import type { Job } from "../job/job.js";
import { readJob } from "../job/read-job.js";
import { planWarp } from "../plan/plan-warp.js";
import { table } from "./layout.js";
import { planText } from "./plan-text.js";

function napkins(): Job {
  const reading = readJob(readFileSync("examples/hall-napkins/job.yaml", "utf8"));
  if (!reading.ok) throw new Error("the example's job cannot be read");
  return reading.job;
}

/** Every job file that an example starts from. */
const exampleJobs = readdirSync("examples", { withFileTypes: true })
  .filter((folder) => folder.isDirectory())
  .flatMap(({ name }) => readdirSync(`examples/${name}`).map((file) => `examples/${name}/${file}`))
  .filter((path) => path.endsWith(".yaml"));

describe("the plan of every example", () => {
  it.each(exampleJobs)("keeps to 80 columns: %s", (path) => {
    const reading = readJob(readFileSync(path, "utf8"));
    if (!reading.ok) throw new Error(`${path} cannot be read`);
    const lines = planText(planWarp(reading.job)).split("\n");
    expect(lines.length).toBeGreaterThan(100);
    for (const line of lines) expect(line.length, line).toBeLessThanOrEqual(80);
  });
});

describe("a printed plan", () => {
  it("shows text from the job as plain lines, whole", () => {
    const note = `${"x".repeat(200)} and the last word`;
    const text = planText(planWarp({ ...napkins(), title: "Hall\u001b[2J\nnapkins\u202e", note }));
    expect(text.startsWith("Hall [2J napkins\n")).toBe(true);
    expect(text).not.toMatch(/[\p{Cc}\p{Cf}](?<!\n)/u);
    expect(text.match(/x/gu)?.length).toBeGreaterThanOrEqual(200);
    expect(text).toContain("and the last word");
    for (const line of text.split("\n")) expect(line.length, line).toBeLessThanOrEqual(80);
  });

  it("keeps to the page with the longest names a yarn may have, every letter of them shown", () => {
    const long = "abcdefghijklmnopqrstuvwx";
    const job = napkins();
    const { madder, ...others } = job.yarns;
    if (madder === undefined) throw new Error("the example has no madder");
    const stripes = [
      { colour: long, ends: 184 },
      { colour: "natural", ends: 92 },
      { colour: "indigo", ends: 92 },
    ];
    const winding = { ...job.winding, mostEndsInChain: 200, tieEvery: 4 };
    const text = planText(planWarp({ ...job, yarns: { ...others, [long]: madder }, stripes, winding }));
    for (const line of text.split("\n")) expect(line.length, line).toBeLessThanOrEqual(80);
    expect(text).toContain(long);
  });

  it("is refused for a plan that was copied, changed by hand or never made", () => {
    const plan = planWarp(napkins());
    for (const none of [undefined, null, 3, {}, { ...plan }, structuredClone({ title: plan.title })]) {
      expect(() => planText(none as never)).toThrow(QuantityError);
    }
  });

  it("runs a long cell on below itself and keeps the columns", () => {
    const rows = [["red", 12, "one two three four five six seven eight nine ten eleven twelve thirteen fourteen"]];
    expect(table(["colour", "ends", "meanwhile"], rows)).toEqual([
      "colour  ends  meanwhile",
      "red       12  one two three four five six seven eight nine ten eleven twelve",
      "              thirteen fourteen",
    ]);
  });
});
