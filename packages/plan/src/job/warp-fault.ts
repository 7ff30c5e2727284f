import { refuse } from "./form.js";
import type { Form } from "./form.js";
import { oneOf, whole, yesOrNo } from "./forms.js";
import { group } from "./group.js";
import { unlike } from "./near-name.js";
import { entryOf, opened } from "./node.js";

interface Mendable {
  /** Whether it is put right; what is done otherwise depends on the fault. */
  readonly mend?: boolean;
}

/** Threads missing from their heddles. */
export interface Broken extends Mendable {
  readonly is: "broken";
  readonly after: number;
  readonly ends?: number;
  /** Where it should hang, to hold against the threading. */
  readonly shaft?: number;
}

/** A thread that shares the heddle of the end before. */
export interface OneTooMany {
  readonly is: "one too many";
  readonly end: number;
}

/** The threading jumps, and the dent has no room. */
export interface LeftOut extends Mendable {
  readonly is: "left out";
  readonly after: number;
  readonly shaft?: number;
}

/** A heddle that hangs there with nothing in it. */
export interface EmptyHeddle {
  readonly is: "empty heddle";
  readonly after: number;
  readonly shaft: number;
}

export interface OnAnotherShaft extends Mendable {
  readonly is: "on another shaft";
  readonly end: number;
  readonly shaft: number;
}

export interface InAnotherDent extends Mendable {
  readonly is: "in another dent";
  readonly end: number;
  readonly dent: number;
}

/** What was found in the old warp; its ends are numbered as counted, threads that are there. */
export type WarpFault = Broken | OneTooMany | LeftOut | EmptyHeddle | OnAnotherShaft | InAnotherDent;

const end = whole("the end");
const after = whole("the end before it", 0);
const shaft = whole("the shaft", 1, 1000);

const broken = group<Broken>(
  { after, is: oneOf("broken"), ends: whole("threads"), shaft, mend: yesOrNo },
  "is",
  "after",
);
const leftOut = group<LeftOut>({ after, is: oneOf("left out"), shaft, mend: yesOrNo }, "is", "after");
const emptyHeddle = group<EmptyHeddle>({ after, is: oneOf("empty heddle"), shaft }, "is", "after", "shaft");
const oneTooMany = group<OneTooMany>({ end: whole("the end", 2), is: oneOf("one too many") }, "is", "end");
const onAnotherShaft = group<OnAnotherShaft>(
  { end, is: oneOf("on another shaft"), shaft, mend: yesOrNo },
  "is",
  "end",
  "shaft",
);
const inAnotherDent = group<InAnotherDent>(
  { end, is: oneOf("in another dent"), dent: whole("the dent"), mend: yesOrNo },
  "is",
  "end",
  "dent",
);

const KINDS: Readonly<Record<WarpFault["is"], Form<WarpFault>>> = {
  broken,
  "one too many": oneTooMany,
  "left out": leftOut,
  "empty heddle": emptyHeddle,
  "on another shaft": onAnotherShaft,
  "in another dent": inAnotherDent,
};
const kinds = new Map<string, Form<WarpFault>>(Object.entries(KINDS));

/** One of the faults, by what it is. */
export const warpFault: Form<WarpFault> = {
  shape: { kind: "either", ways: [...kinds.values()] },
  write: (fault) => KINDS[fault.is].write(fault),
  read: (given, at) => {
    const node = opened(given);
    const word = entryOf(node, "is");
    const is = word?.kind === "text" ? word.text.trim() : word?.kind === "data" ? word.value : undefined;
    const kind = typeof is === "string" ? kinds.get(is) : undefined;
    const expected = "what was found and where";
    if (kind !== undefined) return kind.read(node, at);
    const remedy = typeof is === "string" ? unlike(is, [...kinds.keys()]) : "Write such as { after: 199, is: broken }.";
    return refuse(at, node, {
      expected,
      remedy,
      code: "unknown-word",
      ...(typeof is === "string" ? { received: JSON.stringify(is) } : {}),
    });
  },
};
