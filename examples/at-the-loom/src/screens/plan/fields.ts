import type { RowName } from "../../draft/opens.js";

/** One answer: where it stands in the job, and how it is asked. */
export interface Asked {
  readonly path: string;
  readonly label: string;
  /** A number with one of these units behind it. */
  readonly units?: readonly string[];
  readonly choices?: readonly string[];
  readonly such?: string;
  readonly wide?: boolean;
  readonly mode?: "numeric";
}

const PER = ["per inch", "per 10 cm", "per cm"] as const;
const YARDS = ["yd", "m", "in", "cm"] as const;

/** The answers of each question; those of stripes, pieces and yarns have rows of their own. */
export const FIELDS: Readonly<Record<RowName, readonly Asked[]>> = {
  stripes: [],
  reed: [
    { path: "loom.reed", label: "dents", units: PER },
    { path: "loom.sley", label: "ends in a dent", such: "2, or in turn: 1, 2" },
    { path: "cloth.sett", label: "or, where the reed is not known: ends", units: PER },
  ],
  length: [{ path: "warp.length", label: "length", units: YARDS }],
  oldWarp: [
    { path: "oldWarp.ends", label: "ends, as you count them", mode: "numeric" },
    { path: "groups", label: "count and tie in groups of", mode: "numeric" },
    { path: "loom.threading", label: "shafts, from end 1", such: "1, 2, 3, 4", wide: true },
    { path: "oldWarp.yarn", label: "yarn of the old warp", such: "2-ply of 8 cotton", wide: true },
    { path: "oldWarp.stripes", label: "its colours, from end 1", such: "24 green, 40 white", wide: true },
    { path: "loom.gapInDent", label: "gap between two wires of the reed", such: "1.6 mm, or not measured" },
    { path: "loom.room.before.dents", label: "empty dents before end 1", mode: "numeric" },
    { path: "loom.room.before.heddles", label: "spare heddles on each shaft there", such: "8, or 1, 1, 0, 0" },
    { path: "loom.room.after.dents", label: "empty dents after the last", mode: "numeric" },
    { path: "loom.room.after.heddles", label: "spare heddles on each shaft there", such: "8, or 1, 1, 0, 0" },
    {
      path: "join.sides",
      label: "where they differ, add or drop",
      choices: ["both", "before end 1", "after the last"],
    },
    { path: "join.partner", label: "a new end without an old one", choices: ["hang a thrum", "thread it itself"] },
  ],
  tie: [
    {
      path: "join.knots",
      label: "knots",
      choices: ["in front of the reed", "behind the reed", "behind the heddles"],
    },
    { path: "join.faces", label: "you face", choices: ["back of the loom", "front of the loom"] },
    { path: "loom.endOneOn", label: "end 1, seen from the front", choices: ["left", "right"] },
    {
      path: "join.knot",
      label: "knot",
      choices: ["overhand of both ends", "overhand of one end", "square", "weaver's"],
    },
    { path: "join.order", label: "order", choices: ["from end 1", "from the last end", "one colour at a time"] },
    { path: "oldWarp.left.pastReed", label: "old warp left past the reed", units: ["in", "cm"] },
    { path: "oldWarp.left.behindHeddles", label: "old warp left behind the heddles", units: ["in", "cm"] },
  ],
  pieces: [
    { path: "betweenPieces", label: "woven between two and cut away", such: "1/2 in, or 4 picks" },
    {
      path: "cloth.takeUp",
      label: "the thread, from wound to weaving tension",
      such: "8 % lost, or 21 in to 19 1/2 in",
    },
    { path: "cloth.lengthLoomToFinished", label: "the cloth's length, from the loom to finished", such: "10 % lost" },
    { path: "cloth.widthReedToFinished", label: "its width, from the reed to finished", such: "15 % lost" },
    { path: "warp.wasteInFront", label: "not woven in front, threaded afresh", units: ["in", "cm"] },
    { path: "warp.wasteBehind", label: "not woven behind, threaded afresh", units: ["in", "cm"] },
  ],
  yarns: [],
  weft: [
    {
      path: "weft.stripes",
      label: "yarn, or stripes from the first pick",
      such: "natural, or 12 madder, 20 natural",
      wide: true,
    },
    { path: "weft.lengths", label: "lengths of stripes are", choices: ["finished", "at the loom"] },
    { path: "cloth.picks", label: "picks, at weaving tension", units: PER },
    { path: "weft.allowance", label: "allowance", such: "5 % added" },
    { path: "weft.eachStripe", label: "lost at the tails of every stripe", units: ["in", "cm"] },
  ],
  winding: [
    { path: "winding.threads", label: "threads wound together", mode: "numeric" },
    { path: "winding.chains", label: "chains", such: "by stripe, by group, by colour, or every 40 ends" },
    { path: "winding.most", label: "most in a chain", such: "140 ends, or 80 g" },
    { path: "winding.turn", label: "once round the reel, the yarn on", units: YARDS },
    { path: "winding.step", label: "from peg to peg", units: YARDS },
    { path: "winding.raddle", label: "teeth of the raddle", such: "1 per inch" },
    { path: "winding.extra", label: "ends wound beside, never tied", such: "2 natural, 1 indigo" },
  ],
  more: [
    { path: "title", label: "title", wide: true },
    { path: "note", label: "note", wide: true },
    { path: "cloth.threading", label: "threading the cloth is meant to have", such: "1, 2, 3, 4", wide: true },
    { path: "cloth.finishedWidth", label: "finished width wanted", units: ["in", "cm"] },
    { path: "join.perHour", label: "knots an hour", mode: "numeric" },
    { path: "costs.hours", label: "hours of work", mode: "numeric" },
    { path: "costs.hourlyRate", label: "an hour", such: "15 EUR" },
    { path: "costs.others", label: "other costs", such: "4.50 EUR" },
    { path: "costs.commission", label: "commission", such: "30 % lost" },
  ],
};

/** Of one entry of the pieces. */
export const PIECE: readonly Asked[] = [
  { path: "number", label: "number", such: "9, or as many as the warp gives" },
  { path: "name", label: "name", such: "napkin" },
  { path: "finishedLength", label: "finished length", units: ["in", "cm"] },
  { path: "hemEachEnd", label: "hem, each end", units: ["in", "cm"] },
  { path: "fringeEachEnd", label: "fringe, each end", units: ["in", "cm"] },
  { path: "fringeTwist", label: "fringe, twisted", such: "12 cm to 10 cm" },
  { path: "atLoom", label: "or length at the loom, no piece", units: ["in", "cm"] },
  { path: "weft", label: "weft of its own", such: "oat" },
  { path: "picks", label: "picks of its own", units: PER },
];

/** Of one yarn. */
export const YARN: readonly Asked[] = [
  { path: "count", label: "count, as on the label", such: "2-ply of 8 cotton, or 3360 yd per lb" },
  { path: "sold", label: "sold as", such: "8 oz at 14.50 EUR" },
  { path: "onHand", label: "on hand", such: "6 oz, or none" },
  { path: "fibre", label: "fibre", such: "cotton" },
];

/** What may be found in the old warp, each with what is asked of it. */
export const FOUND: Readonly<Record<string, readonly Asked[]>> = {
  broken: [
    { path: "after", label: "after end", mode: "numeric" },
    { path: "ends", label: "threads", mode: "numeric" },
    { path: "shaft", label: "shaft", mode: "numeric" },
    { path: "mend", label: "mended", choices: ["yes", "no"] },
  ],
  "one too many": [{ path: "end", label: "end", mode: "numeric" }],
  "left out": [
    { path: "after", label: "after end", mode: "numeric" },
    { path: "shaft", label: "shaft", mode: "numeric" },
    { path: "mend", label: "mended", choices: ["yes", "no"] },
  ],
  "empty heddle": [
    { path: "after", label: "after end", mode: "numeric" },
    { path: "shaft", label: "shaft", mode: "numeric" },
  ],
  "on another shaft": [
    { path: "end", label: "end", mode: "numeric" },
    { path: "shaft", label: "shaft", mode: "numeric" },
    { path: "mend", label: "mended", choices: ["yes", "no"] },
  ],
  "in another dent": [
    { path: "end", label: "end", mode: "numeric" },
    { path: "dent", label: "dent", mode: "numeric" },
    { path: "mend", label: "mended", choices: ["yes", "no"] },
  ],
};
