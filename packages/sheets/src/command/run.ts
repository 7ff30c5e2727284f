import { canBeWoven, planWarp, readJob } from "@thrum/plan";
import { faultyJobText, FileTrouble, shownText } from "@thrum/plan/files";
import type { World } from "@thrum/plan/files";
import { workbookOf } from "../index.js";
import { askedFor } from "./asked.js";
import type { Asked } from "./asked.js";
import { HELP } from "./help.js";

const DONE = 0;
const FAULTY_JOB = 1;
const MISREAD = 2;
const CANNOT_BE_WOVEN = 3;
const FILE_TROUBLE = 4;

function misread(says: string, world: World): number {
  world.complain(`${says}\nthrum-sheets --help shows what can be asked.\n`);
  return MISREAD;
}

function written({ job, file, existing }: Extract<Asked, { verb: "write" }>, world: World): number {
  if (file === null && world.isScreen) return misread("A screen can show no workbook: add --to plan.xlsx.", world);
  const reading = readJob(world.read(job));
  if (!reading.ok) {
    world.complain(faultyJobText(job, reading.faults));
    return FAULTY_JOB;
  }
  if (file !== null && world.isSameFile(job, file)) {
    throw new FileTrouble(`${shownText(file)} is the job file itself: give the workbook another name.`);
  }
  const plan = planWarp(reading.value);
  const workbook = workbookOf(plan);
  if (file === null) world.print(workbook);
  else world.write(file, workbook, existing);
  if (canBeWoven(plan)) return DONE;
  world.complain("This warp does not fit the old one as it is planned: thrum plan says why, first of all.\n");
  return CANNOT_BE_WOVEN;
}

/** Does what the words of the command line ask for, and gives the exit code. */
export function run(args: readonly string[], world: World): number {
  try {
    const asked = askedFor(args);
    if (asked.verb === "misread") return misread(asked.says, world);
    if (asked.verb === "write") return written(asked, world);
    world.print(HELP);
    return DONE;
  } catch (error) {
    if (!(error instanceof FileTrouble)) throw error;
    world.complain(`${error.message}\n`);
    return FILE_TROUBLE;
  }
}
