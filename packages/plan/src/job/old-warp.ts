import type { Length } from "@thrum/maths";
import { lengthOrNone } from "./amounts.js";
import { count } from "./count.js";
import type { YarnCount } from "./count.js";
import type { Form } from "./form.js";
import { oneOf, whole } from "./forms.js";
import { list, listOrOne } from "./lists.js";
import { group } from "./group.js";
import { opened, textOf } from "./node.js";
import type { Runs } from "./runs.js";
import { stripes } from "./stripes.js";
import type { Stripe } from "./stripes.js";
import { warpFault } from "./warp-fault.js";
import type { WarpFault } from "./warp-fault.js";

export type {
  Broken,
  EmptyHeddle,
  InAnotherDent,
  LeftOut,
  OnAnotherShaft,
  OneTooMany,
  WarpFault,
} from "./warp-fault.js";
import type { Meanings } from "./meaning.js";

/** The threads in the loom. */
export interface OldWarp {
  /** Threads that are there. */
  readonly ends?: number;
  /** Of its threads. */
  readonly yarn?: readonly YarnCount[];
  /** Its colours by place; the names need no entry among the yarns. */
  readonly stripes?: Runs<Stripe>;
  readonly faults?: readonly WarpFault[];
  /** What will stand there after the cut. */
  readonly left?: { readonly pastReed?: Length; readonly behindHeddles?: Length };
}

/** The old warp, or none: threaded afresh. As data a group with a key for each shape. */
export interface JobOldWarp extends OldWarp {
  readonly none?: true;
}

const asGroup = group<OldWarp>({
  ends: whole("threads"),
  yarn: listOrOne("counts", count),
  stripes,
  faults: list("faults", warpFault),
  left: group<NonNullable<OldWarp["left"]>>({ pastReed: lengthOrNone, behindHeddles: lengthOrNone }),
});

const NONE = oneOf("none");
const isTrue = (value: unknown): value is true => value === true;
const asData = group<{ readonly none: true }>({
  none: {
    shape: { kind: "word", words: ["none"] },
    write: () => "none",
    read: (node) => (node.kind === "data" && isTrue(node.value) ? node.value : null),
  },
});

export const oldWarp: Form<JobOldWarp> = {
  shape: { kind: "either", ways: [asGroup, NONE] },
  read: (node, at) => {
    if (textOf(node) !== null) return NONE.read(node, at) === null ? null : { none: true };
    const inside = opened(node);
    const isNone = node.kind === "data" && inside.kind === "group" && inside.entries.some(({ key }) => key === "none");
    return isNone ? asData.read(node, at) : asGroup.read(node, at);
  },
  write: (value) => (value.none === true ? "none" : asGroup.write(value)),
};

/** What each key of `oldWarp` means, for the schema. */
export const oldWarpMeans: Meanings = {
  ends: "Threads that are there, counted on the loom.",
  yarn: "The count of its threads, or a list of several.",
  stripes: "Its colours by place, as an eye check beside the joining list.",
  faults: "What was found in it; ends are numbered as they were counted.",
  "faults.*.after": "The thread before it; 0 is before end 1.",
  "faults.*.end": "The thread.",
  "faults.*.is": "What is wrong.",
  "faults.*.ends": "How many threads.",
  "faults.*.shaft": "The shaft.",
  "faults.*.dent": "The dent.",
  "faults.*.mend": "Whether it is put right.",
  left: "What will stand there after the cut.",
  "left.pastReed": "Past the reed.",
  "left.behindHeddles": "Behind the heddles.",
};
