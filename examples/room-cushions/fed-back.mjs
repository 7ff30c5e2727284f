// Plans a job, then plans it again with what the first piece really lost, and prints the two plans side by side.
import { readFileSync } from "node:fs";
import { faultText, planDifferencesText, planWarp, readJob } from "@thrum/plan";

const [file = "job.yaml"] = process.argv.slice(2);
const reading = readJob(readFileSync(file, "utf8"));
if (!reading.ok) {
  console.error(reading.faults.map(faultText).join("\n"));
  process.exit(1);
}

const { job } = reading;
const planned = planWarp(job);
if (planned.found === null) {
  console.error("The job has no measures yet: write them under found.");
  process.exit(1);
}

/** What was planned stays where nothing was lost. */
function real(key, plannedLoss) {
  return planned.found.losses.find(({ fills }) => fills === key)?.loss ?? plannedLoss;
}

const { newWarp, pieces } = job;
const again = planWarp({
  ...job,
  newWarp: { ...newWarp, takeUp: real("newWarp.takeUp", newWarp.takeUp) },
  pieces: {
    ...pieces,
    loomToFinished: real("pieces.loomToFinished", pieces.loomToFinished),
    widthReedToFinished: real("pieces.widthReedToFinished", pieces.widthReedToFinished),
  },
});
console.log(planDifferencesText(planned, again));
