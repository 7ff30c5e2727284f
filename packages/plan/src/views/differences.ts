import { asText, compare, isQuantity, yards } from "@thrum/maths";
import type { Length, Mass, Quantity } from "@thrum/maths";
import { planDifferences } from "../data/plan-differences.js";
import type { PlanData } from "../data/plan-data.js";
import { planFrom } from "../data/plan-from.js";
import { plainText } from "../text/clean.js";
import { sectionMarkup, wholePage } from "./html.js";
import { table } from "./layout.js";
import type { Line, Section } from "./block.js";
import { numberDown, perLength } from "./formats.js";
import { byTheTape, byTheYard } from "./length-formats.js";
import { byTheScale } from "./mass-formats.js";
import { unitsOf } from "./units.js";
import type { Units } from "./units.js";

const ALIKE = "The two plans share every figure as it would be written down.";
const HEADS = ["figure", "first", "second"] as const;

const isLength = (amount: Quantity<string>): amount is Length => amount.dimension === "length";
const isMass = (amount: Quantity<string>): amount is Mass => amount.dimension === "mass";

/** Longer than a tape: told in yards or metres. */
const TAPE = yards(10);

/** An amount beside another: what a hand would write down. */
function valueText(value: unknown, units: Units): string {
  if (value === null || value === undefined) return "–";
  if (typeof value === "number") return numberDown(value);
  if (!isQuantity(value)) return plainText(typeof value === "string" ? value : JSON.stringify(value));
  if (isLength(value)) return compare(value, TAPE) < 0 ? byTheTape(value, units) : byTheYard(value, units);
  if (isMass(value)) return byTheScale(value, units);
  return value.dimension.includes("per") ? perLength(value) : asText(value, { step: "0.01" });
}

type Row = readonly [figure: string, first: string, second: string];

/** What differs by less than would be written down is left out. */
function rowsOf(before: PlanData, after: PlanData): readonly Row[] {
  const units = unitsOf(before.job);
  const rows = planDifferences(before, after).map(({ path, label, before: was, after: is }): Row => {
    const row = path.length > 3 ? `${plainText(String(path[2]))}: ` : "";
    return [`${row}${label}`, valueText(was, units), valueText(is, units)];
  });
  return rows.filter(([, was, is]) => was !== is);
}

/** The figures that two plans do not share, side by side. */
export function planDifferencesText(before: PlanData, after: PlanData): string {
  const rows = rowsOf(before, after);
  return rows.length === 0 ? ALIKE : table(["", ...HEADS.slice(1)], rows).join("\n");
}

const UNTITLED = "A warp";

/**
 * The figures that two plans do not share, as one page of HTML that needs nothing else.
 *
 * @param before a plan, or a copy of it
 * @param after the plan it is held against
 */
export function planDifferencesHtml(before: PlanData, after: PlanData): string {
  const [first, second] = [planFrom(before), planFrom(after)];
  const rows = rowsOf(first, second);
  const says = (words: string): Section["blocks"][number] => ({ is: "says", as: "fact", says: [words] });
  const named = [first, second].map(({ job }) => job.title ?? UNTITLED);
  const section: Section = {
    name: "differences",
    heading: "What differs",
    needs: [],
    isOfJob: true,
    blocks: [
      says(`First: ${named[0] ?? UNTITLED}.`),
      says(`Second: ${named[1] ?? UNTITLED}.`),
      rows.length === 0
        ? says(ALIKE)
        : {
            is: "table",
            caption: "Figures that the two plans do not share",
            read: "table",
            ticked: false,
            heads: HEADS,
            rows: rows.map((cells) => ({ cells: cells.map((cell): Line => [cell]), isEdge: false, note: null })),
          },
    ],
  };
  return wholePage("Two plans side by side", [sectionMarkup(section, new Map())]);
}
