// Prints the plan of a job file; a faulty one is answered with all its faults and nothing else.
import { readFileSync } from "node:fs";
import { faultText, planText, planWarp, readJob } from "@thrum/plan";

const [file = "job.yaml"] = process.argv.slice(2);
const reading = readJob(readFileSync(file, "utf8"));
if (reading.ok) {
  console.log(planText(planWarp(reading.job)));
} else {
  console.error(reading.faults.map(faultText).join("\n"));
  process.exitCode = 1;
}
