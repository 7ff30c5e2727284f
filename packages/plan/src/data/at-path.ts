import { QuantityError } from "@thrum/maths";
import type { Origin } from "../core/origin.js";
import type { FigureData } from "../core/read-out.js";
import type { Path } from "../core/source.js";
import { pathText } from "../job/fault.js";
import { isFigure, listedAt } from "./listed.js";
import type { Listed } from "./listed.js";
import type { PlanData } from "./plan-data.js";

/** What stands at a place of plain data; undefined where nothing does. */
export function atPath(data: unknown, path: Path): unknown {
  return path.reduce<unknown>((so, step) => {
    if (typeof so !== "object" || so === null || !Object.hasOwn(so, step)) return undefined;
    return Object.getOwnPropertyDescriptor(so, step)?.value;
  }, data);
}

/** A figure of a plan, with its place in the list. */
export interface Found {
  readonly path: Path;
  readonly listed: Listed;
  readonly row: string | null;
  readonly data: FigureData<unknown>;
}

function isFigureData(value: unknown): value is FigureData<unknown> {
  return typeof value === "object" && value !== null && "calculation" in value && "from" in value;
}

/** The figure at a path; null for a part, a key of the job and a place within a value. */
export function figureAt(plan: PlanData, path: Path): Found | null {
  const found = listedAt(path);
  if (found === null || !isFigure(found.listed)) return null;
  const data = atPath(plan, path);
  return isFigureData(data) ? { path, ...found, data } : null;
}

/** The same, or the refusal of a path that leads to none. */
export function figureOf(caller: string, plan: PlanData, path: Path): Found {
  const found = Array.isArray(path) ? figureAt(plan, path) : null;
  if (found !== null) return found;
  const received = Array.isArray(path) ? pathText(path) : typeof path;
  const remedy = 'Write it as the origins do, such as ["figures", "yarn", "natural", "missing"].';
  const expected = "the path of a figure of the plan";
  throw new QuantityError({ code: "missing", function: caller, path: ["path"], expected, received, remedy });
}

/** The amount that an origin points to. */
export function amountAt(plan: PlanData, origin: Origin): unknown {
  if ("amount" in origin) return origin.amount;
  if ("list" in origin) return origin.list.map((one) => amountAt(plan, one));
  const isWhole = listedAt(origin.path) !== null;
  return atPath(plan, isWhole ? [...origin.path, "value"] : origin.path);
}

/** The figure whose formula a figure shows: itself, or the one that it is as it stands; null where there is none. */
export function workedAt(plan: PlanData, found: Found): Found | null {
  if (found.data.calculation !== null) return found;
  const { is } = found.data.from;
  const next = is !== undefined && "path" in is ? figureAt(plan, is.path) : null;
  return next === null ? null : workedAt(plan, next);
}

/** The members of a list, each with where it comes from. */
export function membersAt(plan: PlanData, origin: Origin): readonly Origin[] {
  if ("list" in origin) return origin.list;
  const value = amountAt(plan, origin);
  const members: readonly unknown[] = Array.isArray(value) ? value : [];
  if ("amount" in origin) return members.map((amount) => ({ amount }));
  const path = listedAt(origin.path) === null ? origin.path : [...origin.path, "value"];
  return members.map((_, at) => ({ path: [...path, at] }));
}
