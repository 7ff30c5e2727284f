import { readFileSync, writeFileSync } from "node:fs";
import { it } from "vitest";
import { readJob } from "../job/read-job.js";
import { planOf } from "../data/plan-data.js";
import { planText } from "./text.js";
import { readdirSync } from "node:fs";
it("prints", () => {
  for (const file of readdirSync("/work/shared/job-examples").filter((f) => !f.includes("progress"))) {
    const reading = readJob(readFileSync("/work/shared/job-examples/" + file, "utf8"));
    if (!reading.ok) throw new Error(JSON.stringify(reading).slice(0, 900));
    writeFileSync("/tmp/views-" + file + ".txt", planText(planOf(reading.job)));
  }
});
