// Writes packages/plan/job.schema.json, the form of a job file for editors; a test of the plan says when it is out of date.
import { writeFileSync } from "node:fs";
import { built, root } from "./built.mjs";

const { jobJsonSchema } = await built("plan");
writeFileSync(`${root}packages/plan/job.schema.json`, `${JSON.stringify(jobJsonSchema(), null, 2)}\n`);
