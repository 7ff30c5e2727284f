import { figureData, partData } from "../core/read-out.js";
import type { FigureData, PartData } from "../core/read-out.js";
import type { Figure, Part } from "../core/source.js";
import { work } from "../core/work.js";
import { isRows } from "../core/row.js";
import type { Row, Work } from "../core/row.js";
import type * as groups from "../figures/groups.js";
import { PLAN } from "../figures/list.js";
import type { Job } from "../job/job.js";
import { LISTED, NAMES, isFigure } from "./listed.js";
import type { Listed } from "./listed.js";

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

type Read = FigureData<unknown> | PartData<unknown>;

function dataOf(at: Work, listed: Listed, row: Row | null): Read {
  return isFigure(listed) ? figureData(at, NAMES, listed.node, row) : partData(at, listed.node, row);
}

/** Those of one group by their names; from entries, as a yarn may be called `__proto__`. */
function groupData(at: Work, figures: readonly Listed[], row: Row | null): Readonly<Record<string, Read>> {
  return Object.fromEntries(figures.map((listed) => [listed.name, dataOf(at, listed, row)]));
}

/** The groups of the list are what the type says: a test holds them together. */
function areFigures(read: object): read is PlanFigures {
  return Object.keys(read).length > 0;
}

/** All figures and parts of a plan being worked out. */
function figuresOf(at: Work): PlanFigures {
  const groups = new Map<string, readonly Listed[]>();
  for (const listed of LISTED) groups.set(listed.group, [...(groups.get(listed.group) ?? []), listed]);
  const read = [...groups].map(([group, figures]): readonly [string, object] => {
    const scope = figures[0]?.scope ?? "plan";
    if (scope === "plan") return [group, groupData(at, figures, null)];
    const rows = at.rowsOf(scope);
    const known = isRows(rows) ? rows : [];
    return [group, Object.fromEntries(known.map((row) => [row.name, groupData(at, figures, row)]))];
  });
  const figures: object = Object.fromEntries(read);
  if (!areFigures(figures)) throw new RangeError("no figure is listed");
  return figures;
}

/** Works out all that a job gives. */
export function planOf(job: Job): PlanData {
  return { thrumPlan: 1, job, figures: figuresOf(work(PLAN, job)) };
}
