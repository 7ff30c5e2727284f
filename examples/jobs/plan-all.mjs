// Checks and plans every job of this folder: its ends, the warp to wind where it is known, and how much still waits.
import { readdirSync, readFileSync } from "node:fs";
import { asText } from "@thrum/maths";
import { faultsText, planText, planWarp, readJob } from "@thrum/plan";

const files = readdirSync(".").filter((name) => /^\d[^.]*\.yaml$/u.test(name));
for (const file of files) {
  const reading = readJob(readFileSync(file, "utf8"));
  if (!reading.ok) {
    console.error(`${file}\n${faultsText(reading.faults)}`);
    process.exitCode = 1;
    continue;
  }
  const plan = planWarp(reading.value);
  const { ends } = plan.figures.loom;
  const { length } = plan.figures.warp;
  // What is wound is rounded up: the nearest figure may be too short.
  const warp =
    length.value === null ? "warp not known yet" : asText(length.value, { step: "0.01", rounding: "roundUp" });
  const lines = planText(plan).split("\n").length;
  console.log(`${file}: ${ends.value} ends, ${warp}; the plan has ${lines} lines`);
}
