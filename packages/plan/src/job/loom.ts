import type { DentsPerLength, Length } from "@thrum/maths";
import { length, lengthNotation } from "./amounts.js";
import { text } from "./form.js";
import type { Form } from "./form.js";
import { either, oneOf, whole } from "./forms.js";
import { list } from "./lists.js";
import { byName } from "./by-name.js";
import { group, shapes } from "./group.js";
import { opened } from "./node.js";
import { dentsPerLength } from "./per-length.js";
import type { Runs } from "./runs.js";
import { sleyed, threading } from "./threading.js";
import type { Sleyed, Threaded } from "./threading.js";
import { yarnNameFault } from "./yarn-name.js";
import type { Meanings } from "./meaning.js";
import { jobWords } from "./job-words.js";

export type { Sleyed, Threaded } from "./threading.js";

/** Ends in the dents, by place or by yarn; by yarn every stripe begins a new dent. */
export interface Sley {
  readonly places?: Runs<Sleyed>;
  /** Ends in a dent by the name of the yarn; `others` for those not named. */
  readonly byYarn?: Readonly<Record<string, number>>;
}

/** Still empty outside the outermost end. */
export interface Room {
  readonly dents?: number;
  readonly heddles?: SpareHeddles;
}

/** One number is so many on each shaft; else a number for each shaft, from shaft 1. */
export type SpareHeddles = number | readonly number[];

/** The eye of a heddle, measured. */
export interface HeddleEye {
  readonly wide: Length;
  readonly high: Length;
  readonly of: "metal" | "cord";
}

/** The wood as it stands. */
export interface JobLoom {
  readonly reed?: DentsPerLength;
  readonly sley?: Sley;
  /** Shafts as drawn in, old places only; threaded afresh, as they will be. */
  readonly threading?: Runs<Threaded>;
  readonly room?: { readonly before?: Room; readonly after?: Room };
  /** Free between two wires of the reed. */
  readonly gapInDent?: Length | "not measured";
  readonly heddleEye?: HeddleEye;
  /** Seen from the front of the loom. */
  readonly endOneOn?: "left" | "right";
}

const perYarn = byName("ends in a dent", whole("ends in a dent", 1, 100), null, (name) =>
  name === "others" ? undefined : yarnNameFault(name),
);

const sley: Form<Sley> = shapes<Sley>({ byYarn: perYarn, places: sleyed }, (node) => {
  const isGroup =
    node.kind === "group" && !node.entries.some(({ key }) => ["repeat", "of", "mirror", "middle"].includes(key));
  return isGroup ? "byYarn" : "places";
});

const heddles = either<number, readonly number[]>(
  whole("heddles", 0),
  list("heddles, one number a shaft", whole("heddles", 0)),
  (node) => opened(node).kind !== "list",
  (value): value is number => typeof value === "number",
);

const room: Form<Room> = group<Room>({ dents: whole("dents", 0), heddles });

const NOT_MEASURED = "not measured";
const gap = text<Length | "not measured">("a length, or not measured", "1.6 mm", {
  read: (written) => (written === NOT_MEASURED ? NOT_MEASURED : lengthNotation.read(written)),
  write: (value) => (value === NOT_MEASURED ? value : lengthNotation.write(value)),
});

export const loom: Form<JobLoom> = group<JobLoom>({
  reed: dentsPerLength,
  sley,
  threading,
  room: group<NonNullable<JobLoom["room"]>>({ before: room, after: room }),
  gapInDent: gap,
  heddleEye: group<HeddleEye>(
    { wide: length, high: length, of: oneOf(...jobWords["loom.heddleEye.of"]) },
    "wide",
    "high",
    "of",
  ),
  endOneOn: oneOf(...jobWords["loom.endOneOn"]),
});

/** What each key of `loom` means, for the schema. */
export const loomMeans: Meanings = {
  reed: "Dents in a length.",
  sley: "Ends in each dent, by place or by yarn.",
  threading: "Shafts as drawn in, old places only; threaded afresh, as they will be.",
  room: "Still empty outside the outermost ends.",
  "room.before": "Before end 1.",
  "room.after": "After the last end.",
  "room.*.dents": "Empty dents.",
  "room.*.heddles": "Empty heddles: a number for each shaft, or one number, so many on each.",
  gapInDent: "Free between two wires of the reed, by a feeler.",
  heddleEye: "The eye of a heddle, measured.",
  "heddleEye.wide": "Its width.",
  "heddleEye.high": "Its height.",
  "heddleEye.of": "What it is made of.",
  endOneOn: "The side of end 1, seen from the front.",
};
