// A plan of an object made by the page itself, in the page's own words.
import * as maths from "@thrum/maths";
import type { Quantity } from "@thrum/maths";
import { pathText, planFrom, planWarp, working } from "@thrum/plan";
import type { FigureData, Job, PlanData } from "@thrum/plan";
import { made, part } from "../page.js";

const { asHtml, asText, attempt, cottonCount, dentsPerInch, faultText, inches, isQuantity, percentLost } = maths;
const typed = (id: string): string => (part(id) as HTMLInputElement).value;
const [natural, madder] = [{ yarns: ["natural"] }, { yarns: ["madder"] }];
const thread = { count: { number: { count: cottonCount(8), plies: [2] } } };

/** The warp of the page: napkins, with two of their figures typed. */
const job = (): Job => ({
  title: "Striped napkins for the village hall",
  stripes: [
    { ends: 24, ...natural },
    { repeat: 4, of: [madder, natural].map((one) => ({ ends: 40, ...one })) },
  ],
  yarns: { natural: thread, madder: thread },
  loom: { reed: dentsPerInch(10), sley: { places: [2] } },
  oldWarp: { none: true },
  cloth: { takeUp: { lost: percentLost(8) }, lengthLoomToFinished: { lost: percentLost(10) } },
  warp: { wasteInFront: inches(10), wasteBehind: inches(18) },
  pieces: [{ number: Number(typed("pieces")), finishedLength: inches(typed("length")), hemEachEnd: inches("0.75") }],
});

/** A figure in a line, its working behind a button; where there is none yet, the keys of the job it waits for. */
function line(plan: PlanData, where: readonly string[], figure: FigureData<number | Quantity<string>>): HTMLElement {
  const { label, value, needs } = figure;
  const amount = isQuantity(value) ? asText(value, { decimals: 2, rounding: "roundUp" }) : String(value);
  const told = value === null ? `waits for ${needs.map(pathText).join(", ")}` : amount;
  const button = made("button", { type: "button" }, `${label}: ${told}`);
  button.onclick = () => {
    const shown = working(plan, ["figures", ...where]);
    part("working").innerHTML = shown === null ? "" : asHtml(shown);
  };
  return made("li", {}, button);
}

function show(): void {
  const planned = attempt(() => planWarp(job()));
  part("wrong").replaceChildren(...(planned.ok ? [] : planned.faults.map((one) => made("li", {}, faultText(one)))));
  if (!planned.ok) return;
  // As a worker or a store would hand it over: plain data, and quantities again.
  const plan = planFrom(structuredClone(planned.value));
  const { warp, loom, yarn } = plan.figures;
  part("figures").replaceChildren(
    line(plan, ["loom", "ends"], loom.ends),
    line(plan, ["warp", "length"], warp.length),
    ...Object.entries(yarn).map(([name, { mass }]) => line(plan, ["yarn", name, "mass"], mass)),
  );
}

document.addEventListener("input", show);
show();
