import {
  canBeWoven,
  jobTextWith,
  faultText,
  jobSchema,
  newJob,
  nextJob,
  planDifferences,
  planDifferencesHtml,
  planDifferencesText,
  planHtml,
  planJson,
  planText,
  planWarp,
  readJob,
} from "../index.js";
import type { Job, PlanData, PrintOptions } from "../index.js";
import { shownText } from "../text/clean.js";
import { askedFor } from "./arguments.js";
import type { Asked, Form, Output } from "./arguments.js";
import { faultyJobText } from "./faulty-job.js";
import { HELP } from "./help.js";
import { reconciled } from "./reconciled.js";
import { FileTrouble } from "./world.js";
import type { World } from "./world.js";

const DONE = 0;
const FAULTY_JOB = 1;
const MISREAD = 2;
const CANNOT_BE_WOVEN = 3;
const FILE_TROUBLE = 4;

type Writer = (plan: PlanData, options: PrintOptions) => string;
const WRITERS: Readonly<Record<Form, Writer>> = { text: planText, json: planJson, html: planHtml };
const COMPARED: Readonly<Record<Form, (before: PlanData, after: PlanData) => string>> = {
  text: planDifferencesText,
  json: (before, after) => JSON.stringify(planDifferences(before, after), null, 2),
  html: planDifferencesHtml,
};

/** The job, or null once its faults have been told. */
function jobFrom(path: string, world: World, text = world.read(path)): Job | null {
  const reading = readJob(text);
  if (reading.ok) {
    if (reading.told.length > 0) world.complain(`${reading.told.map(faultText).join("\n")}\n`);
    return reading.value;
  }
  world.complain(faultyJobText(path, reading.faults));
  return null;
}

/** Prints an answer, or writes it whole into a file that is none of those it was made from. */
function put(text: string, { file, existing }: Output, from: readonly string[], world: World): void {
  if (file === null) {
    world.print(text);
    return;
  }
  if (from.some((path) => world.isSameFile(path, file))) {
    throw new FileTrouble(`${shownText(file)} is the job file itself: give the plan another name.`);
  }
  world.write(file, text, existing);
}

function plan({ job: path, print, ...output }: Extract<Asked, { verb: "plan" }>, world: World): number {
  const job = jobFrom(path, world);
  if (job === null) return FAULTY_JOB;
  const planned = planWarp(job);
  put(`${WRITERS[output.form](planned, print)}\n`, output, [path], world);
  if (canBeWoven(planned)) return DONE;
  world.complain("This warp does not fit the old one as it is planned: the plan says why, first of all.\n");
  return CANNOT_BE_WOVEN;
}

function compare({ jobs, ...output }: Extract<Asked, { verb: "compare" }>, world: World): number {
  const [before, after] = [jobFrom(jobs[0], world), jobFrom(jobs[1], world)];
  if (before === null || after === null) return FAULTY_JOB;
  put(`${COMPARED[output.form](planWarp(before), planWarp(after))}\n`, output, jobs, world);
  return DONE;
}

/** Her own file, changed value by value. */
function next(path: string, world: World): number {
  const text = world.read(path);
  const job = jobFrom(path, world, text);
  if (job === null) return FAULTY_JOB;
  const { job: made, remarks, asked } = nextJob(planWarp(job));
  if (asked.length > 0) world.complain(`${asked.map(({ says }) => says).join("\n")}\n`);
  world.print(jobTextWith(text, made, remarks));
  return DONE;
}

function check(path: string, world: World): number {
  if (jobFrom(path, world) === null) return FAULTY_JOB;
  world.print(`${shownText(path)}: no faults\n`);
  return DONE;
}

function done(asked: Asked, world: World): number {
  switch (asked.verb) {
    case "help":
      world.print(HELP);
      return DONE;
    case "schema":
      world.print(`${JSON.stringify(jobSchema(), null, 2)}\n`);
      return DONE;
    case "new":
      world.print(newJob());
      return DONE;
    case "next":
      return next(asked.job, world);
    case "misread":
      world.complain(`${asked.says}\nthrum help shows what can be asked.\n`);
      return MISREAD;
    case "check":
      return check(asked.job, world);
    case "reconcile":
      return reconciled(asked.page, world) ? DONE : FAULTY_JOB;
    case "compare":
      return compare(asked, world);
    case "plan":
      return plan(asked, world);
  }
}

/** Does what the words of the command line ask for, and gives the exit code. */
export function run(args: readonly string[], world: World): number {
  try {
    return done(askedFor(args), world);
  } catch (error) {
    if (!(error instanceof FileTrouble)) throw error;
    world.complain(`${error.message}\n`);
    return FILE_TROUBLE;
  }
}
