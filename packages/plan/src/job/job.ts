import type { Addition, Loss, Money } from "@thrum/maths";
import { addition, plainLoss } from "./percents.js";
import { money } from "./money.js";
import { cloth, warp } from "./cloth.js";
import type { JobCloth, JobWarp } from "./cloth.js";
import { number, oneOf, whole, words } from "./forms.js";
import { found } from "./found.js";
import type { JobFound } from "./found.js";
import { byName } from "./by-name.js";
import { group } from "./group.js";
import type { Group } from "./group.js";
import { join } from "./join.js";
import type { JobJoin } from "./join.js";
import { loom } from "./loom.js";
import type { JobLoom } from "./loom.js";
import { oldWarp } from "./old-warp.js";
import type { JobOldWarp } from "./old-warp.js";
import { betweenPieces, pieces } from "./pieces.js";
import type { BetweenPieces, JobPiece } from "./pieces.js";
import type { Runs } from "./runs.js";
import { stripes } from "./stripes.js";
import type { Stripe } from "./stripes.js";
import { weft } from "./weft.js";
import type { JobWeft } from "./weft.js";
import { winding } from "./winding.js";
import type { JobWinding } from "./winding.js";
import { fibreNameFault, yarns } from "./yarns.js";
import type { JobYarn } from "./yarns.js";
import type { Meanings } from "./meaning.js";

export type { JobCloth, JobWarp } from "./cloth.js";
export type { JobFound } from "./found.js";
export type { JobJoin, JobSides } from "./join.js";
export type { BesideTheWarp, JobWinding } from "./winding.js";

export interface JobCosts {
  readonly hours?: number;
  readonly hourlyRate?: Money;
  readonly others?: Money;
  /** Of the price. */
  readonly commission?: Loss;
}

/** A warp as it stands on the loom. Every key may be left out: what is not given is not reckoned. */
export interface Job {
  /** The form. */
  readonly thrum?: 1;
  readonly title?: string;
  readonly note?: string;
  /** The new warp, from end 1. */
  readonly stripes?: Runs<Stripe>;
  /** Ends counted, wound, tied and ticked together. */
  readonly groups?: number;
  readonly yarns?: Readonly<Record<string, JobYarn>>;
  readonly loom?: JobLoom;
  readonly oldWarp?: JobOldWarp;
  readonly join?: JobJoin;
  readonly cloth?: JobCloth;
  readonly warp?: JobWarp;
  /** In the order of weaving. */
  readonly pieces?: readonly JobPiece[];
  readonly betweenPieces?: BetweenPieces;
  readonly weft?: JobWeft;
  readonly winding?: JobWinding;
  readonly found?: JobFound;
  readonly costs?: JobCosts;
  readonly label?: { readonly regain?: Readonly<Record<string, Addition>> };
}

const costs = group<JobCosts>({
  hours: number("hours", 100_000),
  hourlyRate: money,
  others: money,
  commission: plainLoss,
});
const label = group<NonNullable<Job["label"]>>({ regain: byName("regains", addition, null, fibreNameFault) });

/** Every key of a job, in the order in which it is written. */
export const jobForm: Group<Job> = group<Job>({
  thrum: oneOf(1),
  title: words(200),
  note: words(5000, true),
  stripes,
  groups: whole("ends"),
  yarns,
  loom,
  oldWarp,
  join,
  cloth,
  warp,
  pieces,
  betweenPieces,
  weft,
  winding,
  found,
  costs,
  label,
});

/** What each key of `costs` means, for the schema. */
export const costsMeans: Meanings = {
  hours: "Hours of work.",
  hourlyRate: "For an hour.",
  others: "All other costs.",
  commission: "Lost of the price to whoever sells it.",
};

/** What each key of `label` means, for the schema. */
export const labelMeans: Meanings = {
  regain: "By fibre, as agreed where the pieces are sold.",
};

/** What each key of a job means, for the schema. */
export const jobMeans: Meanings = {
  thrum: "The form of this file.",
  title: "What the sheets are headed with.",
  note: "A few words for whoever works with the sheets.",
  stripes: "The new warp, from end 1: every thread counts.",
  groups: "Ends counted, wound, tied and ticked together, begun afresh at every stripe; left out, a stripe is a group.",
  yarns: "The yarns by names of your own.",
  loom: "The wood as it stands.",
  oldWarp: "The threads in the loom; none: threaded afresh.",
  join: "What the hands do.",
  cloth: "What the cloth is wanted to be, and what it loses.",
  warp: "Lengths of the warp.",
  pieces: "In the order of weaving; a header or sample is an entry too.",
  betweenPieces: "Woven between two entries and cut away.",
  weft: "The weft of a piece, from its first pick to its last.",
  winding: "How the warp is wound.",
  found: "What was measured at the loom and after it.",
  costs: "What it costs, in one currency.",
  label: "For the label of fibres.",
};
