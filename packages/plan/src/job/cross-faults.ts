import type { Fault } from "./fault.js";
import type { Job } from "./job.js";
import { moneyFaults } from "./money-faults.js";
import { nameFaults } from "./name-faults.js";
import { packageFaults } from "./package-faults.js";
import { placeFaults } from "./place-faults.js";

/** A fault that two keys make together, before its line is known. */
export type CrossFault = Omit<Fault, "function" | "line">;

/** What makes a plan impossible across keys; what merely does not agree is told by the plan. */
export function crossFaults(job: Job): readonly CrossFault[] {
  return [...nameFaults(job), ...packageFaults(job), ...placeFaults(job), ...moneyFaults(job), ...pieceFaults(job)];
}

function pieceFaults({ pieces = [] }: Job): readonly CrossFault[] {
  const open = pieces.flatMap(({ number }, index) => (typeof number === "string" ? [index] : []));
  const second = open.slice(1).map((index): CrossFault => {
    const path = ["pieces", index, "number"];
    const remedy = "Write the number of all entries but one.";
    return { code: "ambiguous", path, expected: "one open number", received: "one more", remedy, params: {} };
  });
  const both = pieces.flatMap(({ atLoom, finishedLength }, index): CrossFault[] => {
    if (atLoom === undefined || finishedLength === undefined) return [];
    const expected = "a finished length, or a length at the loom";
    const remedy = "A piece has its finished length; a header or sample has atLoom.";
    return [{ code: "ambiguous", path: ["pieces", index, "atLoom"], expected, received: "both", remedy, params: {} }];
  });
  return [...second, ...both];
}
