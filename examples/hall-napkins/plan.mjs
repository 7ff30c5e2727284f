// Prints the plan of a job file; a faulty one is answered with all its faults and nothing else.
import { readFileSync } from "node:fs";
import { faultsText, planText, planWarp, readJob } from "@thrum/plan";

const [file] = process.argv.slice(2);
const reading = readJob(readFileSync(file, "utf8"));
if (reading.ok) {
  console.log(planText(planWarp(reading.value)));
} else {
  console.error(faultsText(reading.faults));
  process.exitCode = 1;
}
