import { QuantityError } from "@thrum/maths";
import type { WarpPlan } from "@thrum/plan";
import type { Book } from "../book/book.js";
import { formulaCell, PLAIN, textCell } from "../book/cells.js";
import { commonGroups } from "./common-groups.js";
import { drawingSheet } from "./drawing-sheet.js";
import { groupsSheet } from "./groups-sheet.js";
import { ledgerOf } from "./ledger.js";
import { stripesSheet } from "./stripes-sheet.js";
import { workingOfGroups } from "./working-of-groups.js";
import { yarnGroup } from "./yarn-group.js";

const SAYS =
  "Change the yellow cells; the rest is worked out, and shown to three places. How to join the warp, end for end, stands in the printed plan.";

const BRAND = Symbol.for("thrum.plan.1");

/** A copy has lost its units: only what `planWarp` made can be worked out again. */
function refuseUnlessPlan(plan: unknown): void {
  if (typeof plan === "object" && plan !== null && Object.hasOwn(plan, BRAND)) return;
  throw new QuantityError({
    ...{
      code: "wrong-kind",
      function: "workbookOf",
      path: ["plan"],
      expected: "a plan made by planWarp, or a calculation",
    },
    ...{ received: typeof plan, remedy: "Give the plan itself: a copy of one is only data." },
  });
}

/** A plan as a workbook: its sums, yarns and stripes, which a reader may change, and the working of it all. */
export function planBook(plan: WarpPlan): Book {
  refuseUnlessPlan(plan);
  const common = commonGroups(plan);
  const groups = ledgerOf([...common, ...plan.yarns.map((yarn, at) => yarnGroup(plan, yarn, at + 1))]);
  const warp = groupsSheet({ name: "Warp", title: plan.title, says: SAYS, groups: groups.slice(0, common.length) });
  const says = "The same for each yarn, warp and weft together where it is woven with.";
  const yarns = groupsSheet({ name: "Yarns", title: "The yarns", says, groups: groups.slice(common.length) });
  const stripes = stripesSheet(plan);
  const working = workingOfGroups(groups);
  const checks = [warp, stripes, yarns].map((one) => `SUMPRODUCT(1*(${one.checks}<>""))`);
  const fit = [textCell("E1", "every input fits", PLAIN), formulaCell("F1", `=${checks.join("+")}=0`, null, PLAIN)];
  const first = { ...warp.sheet, cells: [...warp.sheet.cells, ...fit] };
  return {
    sheets: [first, yarns.sheet, stripes.sheet, drawingSheet(plan), working.sheet],
    names: new Map([...warp.names, ...yarns.names, ...stripes.names, ...working.names, ["inputs_fit", "'Warp'!$F$1"]]),
  };
}
