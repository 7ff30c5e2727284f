// Planning one warp from a job already read, warm, beside a general parser that reads the same job's text; and a long warp.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { built, root } from "../support/built.mjs";
import { ratioAtMost, told } from "./row.mjs";
import { timesTheFirst } from "./stopwatch.mjs";

const { parse } = createRequire(`${root}packages/plan/package.json`)("yaml");

/** The job of the example with other stripes: 300 of them, and no old warp that has fewer ends. */
function longText(text, ends) {
  const each = ends / 300;
  return text
    .replace(/^stripes:[\s\S]*?(?=^\S)/mu, `stripes: [{ repeat: 150, of: [${each} natural, ${each} madder] }]\n`)
    .replace(/^oldWarp:[\s\S]*?(?=^\S)/mu, "");
}

export async function figures() {
  const { planWarp, readJob } = await built("plan");
  const text = readFileSync(`${root}examples/jobs/2-hall-napkins.yaml`, "utf8");
  const jobOf = (written) => {
    const reading = readJob(written);
    if (!reading.ok) throw new Error(reading.faults.map(({ expected }) => expected).join("\n"));
    return reading.value;
  };
  const job = jobOf(text);
  const [fifth, whole] = [3900, 19_500].map((ends) => jobOf(longText(text, ends)));
  const [parsing, plan] = timesTheFirst([() => parse(text).groups, () => planWarp(job).thrumPlan], { calls: 20 });
  const [short, grown] = timesTheFirst([() => planWarp(fifth).thrumPlan, () => planWarp(whole).thrumPlan], {
    calls: 2,
  });
  const milliseconds = (time) => time / 1e6;
  return [
    // Two hundred figures and parts with their origins. A job that a program made is checked by its forms before, a quarter more.
    ratioAtMost("a whole plan of 368 ends, warm, ÷ its job's text read by yaml", plan, 9),
    // 5 would be as fast as the ends grow.
    ratioAtMost("a plan of 19500 ends in 300 stripes ÷ one of a fifth of the ends", grown, 2.5),
    told("a whole plan of 368 ends, warm", milliseconds(plan * parsing), "ms"),
    told("a plan of 19500 ends, warm", milliseconds(grown * short), "ms"),
  ];
}
