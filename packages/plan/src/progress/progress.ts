import type { Length } from "@thrum/maths";
import { lengthOrNone } from "../job/amounts.js";
import { Unreadable } from "../job/fault.js";
import { text } from "../job/form.js";
import type { Form } from "../job/form.js";
import { oneOf, whole, words } from "../job/forms.js";
import { group } from "../job/group.js";
import type { Group } from "../job/group.js";
import { list } from "../job/lists.js";
import type { Hand } from "../job/runs.js";
import { stripeNotation } from "../job/stripes.js";
import { inLines } from "./in-lines.js";
import { ticks } from "./ticks-form.js";
import type { Ticks } from "./ticks.js";

/** A group as it was planned when the first tick was made. */
export interface PlannedGroup extends Hand {
  readonly ends: number;
}

/** What was counted in a group, where it differs from the plan. */
export interface OddCount {
  readonly group: number;
  readonly old?: number;
  readonly new?: number;
}

/** Ends seen to be left over at the edge of a stripe, hidden ones not counted. */
export interface LeftOver {
  readonly group: number;
  readonly old?: number;
  readonly new?: number;
}

/** How far the work is that one job plans: a second, small file beside that of the job. */
export interface Progress {
  /** The form. */
  readonly thrumProgress?: 1;
  /** Name of the job file. */
  readonly job: string;
  readonly groups?: readonly PlannedGroup[];
  /** Ends of the chains, as planned at the first tick. */
  readonly chains?: readonly number[];
  readonly counted?: { readonly old?: Ticks; readonly new?: Ticks; readonly odd?: readonly OddCount[] };
  /** Chains. */
  readonly wound?: Ticks;
  /** The chain in work: passes done in its stripe. */
  readonly winding?: { readonly chain: number; readonly stripe: number; readonly pass: number };
  readonly done?: readonly ("cut" | "lay" | "through" | "shafts")[];
  /** Groups. */
  readonly tied?: Ticks;
  /** The group in work: knots done in it. */
  readonly stopped?: { readonly group: number; readonly knot: number };
  readonly leftOver?: readonly LeftOver[];
  /** Entries of the run that are woven, a header too. */
  readonly woven?: number;
  readonly wovenTo?: readonly { readonly piece: number; readonly at: Length }[];
  readonly notes?: readonly { readonly end: number; readonly says: string }[];
}

const plannedGroup = text<PlannedGroup>("a group of ends", "24 natural", {
  read: (written) => {
    const { ends, ...hand } = stripeNotation.read(written);
    if (ends === "the rest") throw new Unreadable("Write the number of its ends.");
    return { ends, ...hand };
  },
  write: (planned) => stripeNotation.write(planned),
});

const number = whole("the group");
const seen = whole("ends", 0);

type Part<K extends keyof Progress> = NonNullable<Progress[K]>;

const stopped = group<Part<"stopped">>({ group: number, knot: whole("knots", 0) }, "group", "knot");
const winding = group<Part<"winding">>(
  { chain: whole("the chain"), stripe: whole("the stripe"), pass: whole("passes", 0) },
  "chain",
  "stripe",
  "pass",
);
const wovenTo = group<Part<"wovenTo">[number]>({ piece: whole("the entry"), at: lengthOrNone }, "piece", "at");
const note = group<Part<"notes">[number]>({ end: whole("the end"), says: words(1000) }, "end", "says");
const done: Form<Part<"done">[number]> = oneOf("cut", "lay", "through", "shafts");

/** Every key of a progress file, in the order in which it is written. */
export const progressForm: Group<Progress> = group<Progress>(
  {
    thrumProgress: oneOf(1),
    job: words(255),
    groups: inLines("groups", plannedGroup, 6),
    chains: inLines("chains", whole("ends"), 12),
    counted: group<Part<"counted">>({
      old: ticks,
      new: ticks,
      odd: list("odd counts", group<OddCount>({ group: number, old: seen, new: seen }, "group")),
    }),
    wound: ticks,
    winding,
    done: list("steps done", done),
    tied: ticks,
    stopped,
    leftOver: list("edges", group<LeftOver>({ group: number, old: seen, new: seen }, "group")),
    woven: whole("entries", 0),
    wovenTo: list("entries", wovenTo),
    notes: list("notes", note),
  },
  "job",
);
