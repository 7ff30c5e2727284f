import { Unreadable } from "./fault.js";
import { text } from "./form.js";
import type { Form } from "./form.js";
import { number, oneOf } from "./forms.js";
import { group, shapes } from "./group.js";
import { opened } from "./node.js";
import type { Meanings } from "./meaning.js";
import { jobWords } from "./job-words.js";

/** Ends added or dropped at the two sides. */
export interface JobSides {
  readonly where?: "both" | "before end 1" | "after the last";
  /** More than nothing is added, less is dropped. */
  readonly numbers?: { readonly before: number; readonly after: number };
}

/** What the hands do. */
export interface JobJoin {
  readonly knots?: "in front of the reed" | "behind the reed" | "behind the heddles";
  readonly knot?: "overhand of both ends" | "overhand of one end" | "square" | "weaver's";
  readonly faces?: "back of the loom" | "front of the loom";
  readonly sides?: JobSides;
  /** How a new end without an old one is held. */
  readonly partner?: "hang a thrum" | "thread it itself";
  readonly order?: "from end 1" | "from the last end" | "one colour at a time";
  /** Knots an hour, counted on a first hundred. */
  readonly perHour?: number;
}

const change: Form<number> = text("ends more or fewer", "8 more", {
  read: (written) => {
    const [, digits = "", word] = /^(\d{1,5}) (more|fewer)$/u.exec(written) ?? [];
    if (word === undefined) throw new Unreadable("Write 8 more, or 4 fewer.");
    const ends = Number(digits);
    if (ends > 20_000) throw new Unreadable("Write at most 20000.", "out-of-range");
    return word === "more" || ends === 0 ? ends : -ends;
  },
  write: (ends) => (ends < 0 ? `${String(-ends)} fewer` : `${String(ends)} more`),
});

type Numbers = NonNullable<JobSides["numbers"]>;

const written = group<{ readonly before?: number; readonly after?: number }>({ before: change, after: change });

/** A side that is left out has none. */
const numbers: Form<Numbers> = {
  shape: written.shape,
  read: (node, at) => {
    const read = written.read(node, at);
    return read === null ? null : { before: read.before ?? 0, after: read.after ?? 0 };
  },
  write: ({ before, after }) => {
    if (after === 0) return written.write({ before });
    return written.write(before === 0 ? { after } : { before, after });
  },
};

const sides: Form<JobSides> = shapes<JobSides>({ where: oneOf(...jobWords["join.sides.where"]), numbers }, (node) =>
  opened(node).kind === "group" ? "numbers" : "where",
);

export const join: Form<JobJoin> = group<JobJoin>({
  knots: oneOf(...jobWords["join.knots"]),
  knot: oneOf(...jobWords["join.knot"]),
  faces: oneOf(...jobWords["join.faces"]),
  sides,
  partner: oneOf(...jobWords["join.partner"]),
  order: oneOf(...jobWords["join.order"]),
  perHour: number("knots an hour", 10_000),
});

/** What each key of `join` means, for the schema. */
export const joinMeans: Meanings = {
  knots: "Where the knots are tied.",
  knot: "Which knot.",
  faces: "Where the weaver sits; asked behind the reed only.",
  sides: "Where ends are added or dropped.",
  "sides.before": "Before end 1.",
  "sides.after": "After the last end.",
  partner: "For new ends without an old one.",
  order: "The order in which they are tied.",
  perHour: "Knots an hour, counted on a first hundred.",
};
