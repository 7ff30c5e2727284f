import { pathText, planPages } from "@thrum/plan";
import type { Line, PlanData, Section } from "@thrum/plan";
import type { Loom, Step } from "../work/loom.js";

const lineText = (line: Line): string =>
  line.map((part) => (typeof part === "object" ? ("yarn" in part ? part.yarn : "") : String(part))).join("");

const PAGES = { cut: "before-cutting", lay: "laying", through: "drawing-through", inches: "first-inches" } as const;
const SAID = ["fact", "step", "caution", "MUST", "CHECK", "ASK"];

function stepsOn({ blocks }: Section): readonly Step[] {
  return blocks.flatMap((block): readonly Step[] =>
    block.is === "says" && SAID.includes(block.as) ? [{ as: block.as, says: lineText(block.says) }] : [],
  );
}

/** By group, what a table remarks beside its row. */
function notesIn(page: Section | undefined): Readonly<Record<number, string>> {
  const rows = (page?.blocks ?? []).flatMap((block) =>
    block.is === "table" && block.heads[0] === "group" ? block.rows : [],
  );
  return Object.fromEntries(
    rows.flatMap(({ cells, note }) => (note === null ? [] : [[Number(lineText(cells[0] ?? [])), note]])),
  );
}

/** The sentences of the plan, as the sheets print them, for the tasks that are led step by step. */
export function sentences(plan: PlanData): Pick<Loom, "steps" | "doIn" | "foundIn" | "waits"> {
  const pages = planPages(plan);
  const page = (name: string): Section | undefined => pages.find((one) => one.name === name);
  const steps = Object.entries(PAGES).map(([task, name]) => {
    const found = page(name);
    return [task, found === undefined ? [] : stepsOn(found)] as const;
  });
  const { tying, winding, tape } = plan.figures;
  const needs = {
    count: tying.counting,
    wind: winding.wound,
    tie: tying.joining,
    shafts: tying.check,
    tape: tape.marks,
  };
  const join = plan.figures.join.knots;
  const asked = { ...needs, cut: join, lay: winding.laying, through: join };
  const waits = Object.entries(asked).map(
    ([task, { value, needs: keys }]) => [task, value === null ? [...new Set(keys.map(pathText))] : []] as const,
  );
  return {
    steps: Object.fromEntries(steps),
    doIn: notesIn(page("joining")),
    foundIn: notesIn(page("old-warp")),
    waits: Object.fromEntries(waits),
  };
}
