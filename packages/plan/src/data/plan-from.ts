import { QuantityError } from "@thrum/maths";
import type { Path } from "../core/source.js";
import { frozen } from "../job/frozen.js";
import { printable } from "../text/printable.js";
import { checkedJob } from "../job/checked-job.js";
import { LISTED, isFigure } from "./listed.js";
import type { Listed } from "./listed.js";
import { madeAgain } from "./made-again.js";
import type { PlanData } from "./plan-data.js";

type Group = Readonly<Record<string, unknown>>;

function isGroup(value: unknown): value is Group {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function refuse(path: Path, expected: string, value: unknown): never {
  if (value === undefined || value === null) return refuseAs(path, expected, "nothing");
  return refuseAs(path, expected, typeof value === "object" ? "other data" : printable(JSON.stringify(value)));
}

function refuseAs(path: Path, expected: string, received: string): never {
  const remedy = "Give what planWarp made, or a copy of it as JSON or structuredClone leaves it.";
  throw new QuantityError({
    code: "wrong-kind",
    function: "planFrom",
    path: ["copy", ...path],
    expected,
    received,
    remedy,
  });
}

function groupIn(value: unknown, path: Path, expected: string): Group {
  return isGroup(value) ? value : refuse(path, expected, value);
}

function isPath(value: unknown): value is Path {
  return Array.isArray(value) && value.every((step) => typeof step === "string" || typeof step === "number");
}

function isOrigin(value: unknown): boolean {
  if (!isGroup(value)) return false;
  if ("list" in value) return Array.isArray(value["list"]) && value["list"].every(isOrigin);
  return "amount" in value || isPath(value["path"]);
}

function isTextOrNone(value: unknown): boolean {
  return value === null || typeof value === "string";
}

/** Refuses what is no figure or part as data. */
function checkRead(read: unknown, listed: Listed, path: Path): void {
  const one = groupIn(read, path, isFigure(listed) ? "a figure" : "a part");
  const { label, calculation, from, needs, why } = one;
  const isRead = "value" in one && Array.isArray(needs) && needs.every(isPath) && isTextOrNone(why);
  if (!isRead) refuse(path, "a value, what it needs and why there is none", read);
  if (!isFigure(listed)) return;
  const isTold = typeof label === "string" && isTextOrNone(calculation) && isGroup(from);
  if (!isTold || !Object.values(from).every(isOrigin))
    refuse(path, "a label, a calculation and where it comes from", read);
}

function isPlan(value: Group): value is Group & PlanData {
  const figures = groupIn(value["figures"], ["figures"], "the figures");
  for (const listed of LISTED) {
    const { group, name, scope } = listed;
    const inGroup = groupIn(figures[group], ["figures", group], "a group of figures");
    if (scope === "plan") checkRead(inGroup[name], listed, ["figures", group, name]);
    else
      for (const [row, inRow] of Object.entries(inGroup)) {
        const own = groupIn(inRow, ["figures", group, row], "the figures of a row");
        checkRead(own[name], listed, ["figures", group, row, name]);
      }
  }
  return true;
}

/**
 * A plan of a copy of one, as JSON or structuredClone leaves it: the quantities are made again.
 *
 * @param copy a plan, or a copy of one
 * @throws QuantityError "wrong-kind" for what is no plan, "unreadable" for an amount or data that none holds
 */
export function planFrom(copy: unknown): PlanData {
  const made = groupIn(madeAgain(copy), [], "a plan");
  if (made["thrumPlan"] !== 1) refuse(["thrumPlan"], "1, the form of this plan", made["thrumPlan"]);
  const reading = checkedJob(made["job"]);
  if (!reading.ok) {
    const [fault] = reading.faults;
    return refuseAs(["job", ...fault.path], fault.expected, fault.received);
  }
  return isPlan(made)
    ? frozen({ thrumPlan: 1, job: reading.value, figures: made.figures })
    : refuse([], "a plan", made);
}
