import type { Names } from "../core/origin.js";
import { figureData, partData } from "../core/read-out.js";
import type { FigureData, PartData } from "../core/read-out.js";
import { nodeOf } from "../core/source.js";
import type { Figure, Node, Part } from "../core/source.js";
import { isRows, work } from "../core/work.js";
import type { Row, Work } from "../core/work.js";
import * as groups from "../figures/groups.js";
import { PLAN } from "../figures/list.js";
import type { Job } from "../job/job.js";

type Groups = typeof groups;

/** A figure or a part as data; by row, where it is worked once for each. */
type AsData<X> =
  X extends Figure<infer T, string> ? FigureData<T> : X extends Part<infer T, string> ? PartData<T> : never;

type GroupData<G> = { readonly [K in keyof G]: AsData<G[K]> };

type ScopeOf<G> = G[keyof G] extends { readonly at: infer S } ? S : never;

/** Figures and parts by their group, those of rows by row. */
export type PlanFigures = {
  readonly [G in keyof Groups]: "plan" extends ScopeOf<Groups[G]>
    ? GroupData<Groups[G]>
    : Readonly<Record<string, GroupData<Groups[G]>>>;
};

/** A plan as data: it may be stored, sent and copied; `planFrom` makes the quantities of a copy again. */
export interface PlanData {
  /** The form. */
  readonly thrumPlan: 1;
  readonly job: Job;
  readonly figures: PlanFigures;
}

/** The group, the name and the node of everything on the list. */
const LISTED: readonly { readonly group: string; readonly name: string; readonly node: Node }[] = Object.entries(
  groups,
).flatMap(([group, figures]) => Object.entries(figures).map(([name, one]) => ({ group, name, node: nodeOf(one) })));

/** The names by which figures are told. */
export const NAMES: Names = new Map(LISTED.map(({ group, name, node }) => [node, [group, name]]));

function dataOf(at: Work, node: Node, row: Row | null): FigureData<unknown> | PartData<unknown> {
  return "label" in node && node.label !== null ? figureData(at, NAMES, node, row) : partData(at, node, row);
}

/** All figures and parts of a plan being worked out. */
export function figuresOf(at: Work): PlanFigures {
  const read: Record<string, Record<string, unknown>> = {};
  for (const { group, name, node } of LISTED) {
    const figures = (read[group] ??= {});
    const scope = "scope" in node ? node.scope : "plan";
    if (scope === "plan") figures[name] = dataOf(at, node, null);
    else {
      const rows = at.rowsOf(scope);
      for (const row of isRows(rows) ? rows : []) {
        const own = (figures[row.name] ??= {}) as Record<string, unknown>;
        own[name] = dataOf(at, node, row);
      }
    }
  }
  return read as unknown as PlanFigures;
}

/** Works out all that a job gives. */
export function planOf(job: Job): PlanData {
  return { thrumPlan: 1, job, figures: figuresOf(work(PLAN, job)) };
}
