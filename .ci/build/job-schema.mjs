// Writes packages/plan/job.schema.json, the form of a job file for editors; `--check` only says whether it is out of date.
import { readFileSync, writeFileSync } from "node:fs";
import { build } from "esbuild";
import { root } from "../support/built.mjs";

const file = `${root}packages/plan/job.schema.json`;
const { outputFiles } = await build({
  entryPoints: [`${root}packages/plan/src/job/job-schema.ts`],
  bundle: true,
  format: "esm",
  platform: "node",
  tsconfig: `${root}packages/plan/tsconfig.json`,
  write: false,
  logLevel: "error",
});
const { jobSchema } = await import(
  `data:text/javascript;base64,${Buffer.from(outputFiles[0].text).toString("base64")}`
);
const schema = `${JSON.stringify(jobSchema(), null, 2)}\n`;
if (!process.argv.includes("--check")) writeFileSync(file, schema);
else if (readFileSync(file, "utf8") !== schema) {
  console.error("packages/plan/job.schema.json is out of date: run pnpm generate");
  process.exitCode = 1;
}
