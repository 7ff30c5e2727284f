import { asText } from "@thrum/maths";
import {
  jobTextWith,
  faultText,
  pathText,
  planFrom,
  planWarp,
  readJob,
  working,
  writtenText,
  writtenValue,
} from "@thrum/plan";
import type { Fault, FaultPath, Job, Path, PlanData, WrittenValue } from "@thrum/plan";
import { settled } from "../draft/draft.js";
import type { Change, Draft, Settled } from "../draft/draft.js";
import type { Band } from "../parts/yarn.js";
import { EXAMPLES } from "../draft/examples.js";
import type { Example } from "../draft/examples.js";
import { edgesOf } from "./edges.js";
import type { Edge } from "./edges.js";
import { bandsOf } from "./looks.js";
import { shownOf } from "./shown.js";
import type { Shown } from "./shown.js";

/** A fault with its place as it is written and its sentence. */
export interface ToldFault {
  readonly path: string;
  readonly says: string;
  readonly fault: Fault;
}

export type Reckoned =
  | { readonly ok: true; readonly job: Job; readonly plan: PlanData }
  | { readonly ok: false; readonly faults: readonly ToldFault[] };

/** A draft with all that a screen shows of it. */
export interface Drafted extends Settled {
  /** What stands in the job, by key, as it is typed. */
  readonly written: WrittenValue;
  /** The same by place, a list as one types it. */
  readonly texts: Readonly<Record<string, string>>;
  readonly title: string;
  readonly shown: Shown;
}

/** A job in a list: its stripes, and what of it is still to come. */
export interface Card {
  readonly bands: readonly Band[];
  readonly ends: number | null;
  /** No yarn or no length yet. */
  readonly half: boolean;
  readonly counted: boolean;
}

const told = (fault: Fault): ToldFault => ({ path: pathText(fault.path), says: faultText(fault), fault });

function reckoned(text: string): Reckoned {
  const reading = readJob(text);
  if (!reading.ok) return { ok: false, faults: reading.faults.map(told) };
  return { ok: true, job: reading.value, plan: planWarp(reading.value) };
}

function planIn(text: string): PlanData {
  const reading = readJob(text);
  if (!reading.ok) throw new RangeError(reading.faults.map(faultText).join("\n"));
  return planWarp(reading.value);
}

/** Every value with its place; one yarn all of the piece is the whole of a weft. */
function textsOf(value: WrittenValue, path: FaultPath = []): readonly (readonly [string, string])[] {
  const own = path.length === 0 ? [] : [[pathText(path), writtenText(value)] as const];
  const isList = Array.isArray(value);
  const inside: readonly (readonly [string, WrittenValue])[] = typeof value === "string" ? [] : Object.entries(value);
  const weft = path.length > 0 && path.at(-1) === "weft" && (typeof value === "string" || isList);
  const stripes = weft ? [[pathText([...path, "stripes"]), writtenText(value)] as const] : [];
  return [...own, ...stripes, ...inside.flatMap(([key, one]) => textsOf(one, [...path, isList ? Number(key) : key]))];
}

function drafted(draft: Draft, changes: readonly Change[]): Drafted {
  const after = settled(draft, changes);
  const plan = planIn(after.text);
  const written = writtenValue(after.text) ?? {};
  return {
    ...after,
    written,
    texts: Object.fromEntries(textsOf(written)),
    title: plan.job.title ?? "",
    shown: shownOf(plan),
  };
}

function card(text: string): Card {
  const plan = planIn(text);
  const { ends } = plan.figures.loom;
  const { length } = plan.figures.warp;
  return {
    bands: bandsOf(plan),
    ends: ends.value,
    half: ends.value === null || length.value === null,
    counted: plan.job.oldWarp?.ends !== undefined || plan.job.oldWarp?.none === true,
  };
}

/** The sum of a figure, a line each, as `explain` tells it; null where there is none. */
function workingOf(text: string, path: Path): string | null {
  const found = working(planFrom(planIn(text)), path);
  return found === null ? null : asText(found);
}

/** Where the stripes meet the old warp. */
const edges = (text: string): readonly Edge[] => edgesOf(planIn(text));

/** The colours of the napkins on a screen. */
const SEEN = { natural: "#e8dcc0", madder: "#a4392f", indigo: "#2b3a6b" };

const texts = import.meta.glob<string>("../../../jobs/*.yaml", { query: "?raw", import: "default" });

/** An example; the napkins with their colours. */
async function example(name: Example = "napkins"): Promise<string> {
  const text = (await texts[`../../../jobs/${EXAMPLES[name]}.yaml`]?.()) ?? "";
  const seen = name === "napkins" ? Object.entries(SEEN) : [];
  return jobTextWith(
    text,
    seen.map(([yarn, value]) => ({ path: ["yarns", yarn, "seen"], value })),
  );
}

/** A list as it is written on one line, and back. */
const listText = (value: WrittenValue): string => writtenText(value);
const listOf = (text: string): WrittenValue | null => writtenValue(text);

/** Loaded when first asked for: they are not needed to plan. */
const sheets = async (text: string): Promise<string> => (await import("./sheets.js")).sheetsOf(text);
const workbook = async (text: string): Promise<Uint8Array> => (await import("./sheets.js")).workbook(text);

/** What the shelf, the plan and the sheets ask: each takes plain data and gives plain data. */
export const planViews = {
  reckoned,
  drafted,
  card,
  workingOf,
  edges,
  example,
  listText,
  listOf,
  sheets,
  workbook,
};
