import { isQuantity } from "@thrum/maths";
import type { Mass } from "@thrum/maths";
import { amountText, planFrom, unitsOf } from "@thrum/plan";
import type { Path, PlanData, Units } from "@thrum/plan";
import type { Band, Yarn } from "../parts/yarn.js";
import { eighths } from "./eighths.js";
import { bandsOf, yarnsOf } from "./looks.js";
import { toldOf } from "./told.js";
import type { Finding } from "./told.js";

/** A number with its name; it opens into its working, where it has one. */
export interface Sum {
  readonly label: string;
  readonly value: string;
  readonly path: Path;
}

/** Columns that have a number, with a row for each yarn. */
export interface YarnTable {
  readonly columns: readonly string[];
  readonly rows: readonly YarnRow[];
}

/** What the run takes of one yarn, as far as it is known. */
export interface YarnRow {
  readonly yarn: Yarn;
  readonly cells: readonly (Sum | null)[];
}

/** All that the plan page shows of a plan: texts, so that the screen reckons nothing. */
export interface Shown {
  readonly units: Units;
  readonly bands: readonly Band[];
  readonly yarns: readonly Yarn[];
  readonly sums: readonly Sum[];
  /** What the run takes of each yarn, then what is there of it and what to buy. */
  readonly tables: readonly YarnTable[];
  readonly findings: readonly Finding[];
  /** Whether the new warp can be tied to the old; null while it is not known. */
  readonly fits: "fits" | "look first" | "does not fit" | null;
  readonly knots: number | null;
  /** Ends of the widest stripe that is wider than a chain may be; null where none is. */
  readonly tooWide: number | null;
}

interface Read {
  readonly label: string;
  readonly value: unknown;
}
type Way = "tape" | "yard";
type Rounding = "nearest" | "roundUp" | "roundDown";

const SUMS: readonly (readonly [group: string, name: string, way: Way, rounding: Rounding])[] = [
  ["loom", "ends", "tape", "nearest"],
  ["loom", "widthInReed", "tape", "nearest"],
  ["loom", "dents", "tape", "nearest"],
  ["loom", "finishedWidth", "tape", "nearest"],
  ["warp", "length", "yard", "roundUp"],
  ["warp", "needed", "tape", "roundUp"],
  ["warp", "short", "tape", "roundUp"],
  ["warp", "left", "tape", "roundDown"],
  ["join", "spared", "tape", "roundDown"],
  ["tying", "knots", "tape", "nearest"],
  ["tying", "hours", "tape", "nearest"],
];

type Column = readonly [name: string, way: Way, rounding: Rounding];
const TABLES: readonly (readonly Column[])[] = [
  [
    ["ends", "yard", "nearest"],
    ["inWarp", "yard", "roundUp"],
    ["inAll", "yard", "roundUp"],
  ],
  [
    ["mass", "yard", "roundUp"],
    ["missing", "yard", "roundUp"],
    ["packages", "yard", "roundUp"],
    ["spare", "yard", "roundDown"],
  ],
];

/** A figure by its place in the plan; the names above are those of the package, so a wrong one shows in the first test. */
function readAt(plan: PlanData, path: Path): Read | null {
  let at: unknown = plan;
  for (const step of path) at = typeof at === "object" && at !== null ? Reflect.get(at, step) : undefined;
  const found = at as Read | undefined;
  return found === undefined || found.value === null ? null : found;
}

const isMass = (value: unknown): value is Mass => isQuantity(value) && value.dimension === "mass";

function sumAt(plan: PlanData, path: Path, units: Units, by: Way, rounding: Rounding): Sum | null {
  const read = readAt(plan, path);
  if (read === null) return null;
  // All masses of one yarn stand in one unit.
  const of = path.slice(0, -1);
  const other = (readAt(plan, [...of, "packageMass"]) ?? readAt(plan, [...of, "there"]))?.value;
  const like = isMass(other) ? { like: other } : {};
  const { label, value } = read;
  const isAmount = typeof value === "number" || isQuantity(value);
  return {
    label,
    value: isAmount ? eighths(amountText(value, units, { by, rounding, ...like })) : String(value),
    path,
  };
}

function yarnTable(plan: PlanData, yarns: readonly Yarn[], units: Units, all: readonly Column[]): YarnTable {
  const cellsOf = ({ name: yarn }: Yarn): readonly (Sum | null)[] =>
    all.map(([name, way, rounding]) => sumAt(plan, ["figures", "yarn", yarn, name], units, way, rounding));
  const rows = yarns.map((yarn): YarnRow => ({ yarn, cells: cellsOf(yarn) }));
  const labels = all.map((_, at) => rows.map(({ cells }) => cells[at]?.label).find((label) => label !== undefined));
  return {
    columns: labels.flatMap((label) => label ?? []),
    rows: rows.map(({ yarn, cells }) => ({ yarn, cells: cells.filter((_, at) => labels[at] !== undefined) })),
  };
}

/** What comes of the answers so far; a number that waits is not there. */
export function shownOf(data: PlanData): Shown {
  const plan = planFrom(data);
  const units = unitsOf(plan.job);
  const holds = plan.figures.warp.holds.value;
  const fixed = plan.job.warp?.length !== undefined;
  const sums = SUMS.flatMap(([group, name, way, rounding]) => {
    const isOther = (name === "short" && holds !== "short") || (name === "left" && holds !== "enough");
    if (isOther || ((name === "needed" || name === "left") && !fixed)) return [];
    const sum = sumAt(plan, ["figures", group, name], units, way, rounding);
    return sum === null ? [] : [sum];
  });
  const yarns = yarnsOf(plan);
  const tables = TABLES.map((columns) => yarnTable(plan, yarns, units, columns));
  const findings = toldOf(plan);
  const isTied = plan.figures.join.standing.value === "tied" && plan.job.oldWarp?.ends !== undefined;
  const worst = findings[0]?.mark;
  const told = Object.values(plan.figures.told).flatMap(({ value }) => value ?? []);
  const wide = told.flatMap(({ standing, about, values: { ends, most } }) =>
    standing === "must" && about === "stripe" && typeof ends === "number" && typeof most === "number" ? [ends] : [],
  );
  return {
    units,
    bands: bandsOf(plan),
    yarns,
    sums,
    tables: tables.filter(({ columns }) => columns.length > 0),
    findings,
    fits: !isTied ? null : worst === "MUST" ? "does not fit" : worst === "CHECK" ? "look first" : "fits",
    knots: plan.figures.tying.knots.value,
    tooWide: wide.length === 0 ? null : Math.max(...wide),
  };
}
