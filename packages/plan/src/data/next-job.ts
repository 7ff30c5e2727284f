import type { JobCloth, JobWarp } from "../job/cloth.js";
import type { Remark } from "../job/job-text-with.js";
import type { Form, Tree } from "../job/form.js";
import { frozen } from "../job/frozen.js";
import { jobForm } from "../job/job.js";
import type { Job } from "../job/job.js";
import { sameData } from "../job/same-data.js";
import { flowText } from "../job/yaml-lines.js";
import { clothFound } from "../parts/next-measures.js";
import type { Told } from "../parts/told.js";
import { loomNow } from "./loom-now.js";
import { oldWarpNow } from "./old-warp-now.js";
import type { PlanData } from "./plan-data.js";

/** The job after this one, and what is to be said of it. */
export interface NextJob {
  readonly job: Job;
  /** The figures as they were, behind those that were found. */
  readonly remarks: readonly Remark[];
  /** Found measures that a slip explains: they are asked about and not carried. */
  readonly asked: readonly Told[];
}

function inWords<T>(form: Form<T>, value: T): string {
  const tree: Tree = form.write(value);
  return flowText(tree);
}

/** Keys that stand otherwise than before, each with its old figure. */
function remarksOf<K extends "cloth" | "warp">(group: K, was: Job[K], now: Job[K]): readonly Remark[] {
  const { shape } = jobForm.keys[group];
  const forms: Readonly<Record<string, Form<unknown>>> = shape.kind === "group" ? shape.keys : {};
  const before = new Map<string, unknown>(Object.entries(was ?? {}));
  return Object.entries(now ?? {}).flatMap(([key, value]: [string, unknown]): readonly Remark[] => {
    const form = forms[key];
    if (form === undefined || sameData(value, before.get(key))) return [];
    const old = before.get(key);
    return [{ path: [group, key], says: old === undefined ? "was not given" : `was ${inWords(form, old)}` }];
  });
}

/** Asked about, so the old figure stays where it stands. */
function remarksAsked(cloth: JobCloth, keys: readonly (readonly [keyof JobCloth, readonly Told[]])[]) {
  return keys.flatMap(([key, asked]): readonly Remark[] =>
    asked.length === 0 || cloth[key] === undefined
      ? []
      : [{ path: ["cloth", key], says: "was not changed: what was found is asked about" }],
  );
}

function leaving(group: object | undefined, ...names: readonly string[]): Readonly<Record<string, unknown>> {
  const entries: readonly (readonly [string, unknown])[] = Object.entries(group ?? {});
  return Object.fromEntries(entries.filter(([name]) => !names.includes(name)));
}

function without<T extends object>(group: T | undefined): T | undefined {
  return group === undefined || Object.keys(group).length === 0 ? undefined : group;
}

/** What stands in a group of one, however deep. */
function innermost(tree: Tree): Tree {
  const [only] = typeof tree === "object" && "group" in tree ? tree.group : [];
  return only === undefined ? tree : innermost(only[1]);
}

/** What is there of each yarn has been used since. */
function yarnsNow(yarns: Job["yarns"]): { readonly yarns: Job["yarns"]; readonly remarks: readonly Remark[] } {
  const remarks: Remark[] = [];
  const left = Object.entries(yarns ?? {}).map(([name, { onHand, ...yarn }]) => {
    if (onHand !== undefined) {
      const said = flowText(innermost(jobForm.keys.yarns.write({ [name]: { onHand } })));
      remarks.push({ path: ["yarns", name], says: `was ${said} on hand: weigh what is left` });
    }
    return [name, yarn] as const;
  });
  return { yarns: yarns === undefined ? undefined : Object.fromEntries(left), remarks };
}

/**
 * The job after this one: the loom as it now stands with this warp as the old one, and what was found in place of what
 * was reckoned with. Measures that a slip explains are asked about and not carried; what must be counted or weighed
 * anew (yarn on hand, what will stand after the cut, the room where ends were dropped) is left out.
 *
 * @param plan the plan of a job with what was found in it
 * @returns the next job, the old figures as remarks for `jobTextWith`, and what is asked
 */
export function nextJob(plan: PlanData): NextJob {
  const { found = {}, join, cloth = {}, warp = {} } = plan.job;
  const { told } = plan.figures;
  const asked = {
    takeUp: [
      ...(told.takeUpFound.value ?? []),
      ...(told.measures.value ?? []).filter(({ about }) => about === "found take-up"),
    ],
    length: (told.measures.value ?? []).filter(({ about }) => about === "found length"),
    width: [
      ...(told.measures.value ?? []).filter(({ about }) => about === "found width"),
      ...(told.inReed.value ?? []),
    ],
  };
  const { inFront, behind } = found.waste ?? {};
  const clothNow: JobCloth = { ...cloth, ...clothFound(found, asked) };
  const warpNow: JobWarp = {
    ...warp,
    ...(inFront === undefined ? {} : { wasteInFront: inFront }),
    ...(behind === undefined ? {} : { wasteBehind: behind }),
  };
  const perHour = found.knotsPerHour ?? join?.perHour;
  const joinNow = { ...leaving(join, "sides", "partner"), ...(perHour === undefined ? {} : { perHour }) };
  const wood = loomNow(plan);
  const threads = oldWarpNow(plan);
  const yarn = yarnsNow(plan.job.yarns);
  const made = { ...leaving(plan.job, "found"), yarns: yarn.yarns, loom: wood.loom, oldWarp: threads.oldWarp };
  const groups = { join: without(joinNow), cloth: without(clothNow), warp: without(warpNow) };
  const whole = Object.fromEntries(Object.entries({ ...made, ...groups }).filter(([, value]) => value !== undefined));
  return frozen({
    job: whole,
    remarks: [
      ...yarn.remarks,
      ...wood.remarks,
      ...threads.remarks,
      ...remarksOf("cloth", cloth, clothNow),
      ...remarksAsked(cloth, [
        ["takeUp", asked.takeUp],
        ["lengthLoomToFinished", asked.length],
        ["widthReedToFinished", asked.width],
      ]),
      ...remarksOf("warp", warp, warpNow),
    ],
    asked: [...asked.takeUp, ...asked.length, ...asked.width],
  });
}
