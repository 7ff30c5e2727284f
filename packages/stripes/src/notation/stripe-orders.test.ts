import { cited } from "#ci/cited.js";
import {
  apostolico,
  brooks1892,
  colorPlayPlaid,
  degarmo,
  durhamWeaver,
  elliot,
  lunaticFringe,
  lynneRides2017,
  neilson,
  paradise2021,
  sutton,
  textilesOfIndia,
  weaveAway2012,
  weaveAway2013,
  weeFolkArt,
} from "#ci/sources.js";
import { totalsOf } from "../sequence/totals.js";
import { multiply } from "../sequence/multiply.js";
import { sequenceFromEnds } from "../sequence/sequence-from-ends.js";
import { sequence, type Stripe } from "../sequence/sequence.js";
import { sequenceFromColourRows } from "./sequence-from-colour-rows.js";
import { sequenceFromList } from "./sequence-from-list.js";

/** A legend in which every name stands for itself. */
const legendOf = (...names: readonly string[]) => Object.fromEntries(names.map((name) => [name, name]));
/** The ends of each name in a list. */
function endsOfNames(input: { text: string; legend: Record<string, string> }): string {
  return [...totalsOf(sequenceFromList(input).sequence)].map(([name, ends]) => `${name} ${ends}`).join(", ");
}
/** Written stripes and stripes one sees. */
function stripesWrittenAndSeen(input: { text: string; legend: Record<string, string> }): string {
  const { written, runs } = sequenceFromList(input).sequence;
  return `${written.length} written, ${runs.length} seen`;
}

const gingham = {
  text: "20 pink, 2 black, 6 white, 2 black, 6 white, 6 black, 6 white, 2 black, 6 white, 2 black = 58",
  legend: legendOf("pink", "black", "white"),
};
const checks = { source: brooks1892, at: "section Checks", status: "read" } as const;
cited("gingham of 58 ends", { ...checks, prints: "58", exact: "58" }, sequenceFromList, [gingham], "total");
cited(
  "gingham: the total printed with the list",
  { ...checks, prints: "58", exact: "58" },
  sequenceFromList,
  [gingham],
  "printedTotal",
);
cited("gingham: ends of each colour", { ...checks, prints: "", exact: "pink 20, black 14, white 24" }, endsOfNames, [
  gingham,
]);
cited(
  "shirting of two yarn counts",
  { ...checks, prints: "", exact: "white 24s 24, red 20s 2, blue 20s 2" },
  endsOfNames,
  [{ text: "12 white 24s, 2 red 20s, 12 white 24s, 2 blue 20s", legend: legendOf("white 24s", "red 20s", "blue 20s") }],
);

const plaid = { source: colorPlayPlaid, status: "read" } as const;
const purples = legendOf("dark purple", "light purple", "ice blue");
const warp = {
  text: "10 dark purple; 10 light purple; 10 ice blue; 10 light purple; 10 dark purple; 10 light purple; 10 ice blue; 10 light purple; 10 dark purple",
  legend: purples,
};
cited(
  "plaid of nine stripes",
  { ...plaid, at: "warp color order", prints: "90", exact: "90" },
  sequenceFromList,
  [warp],
  "total",
);
cited(
  "plaid: ends of each colour",
  { ...plaid, at: "warp color order", prints: "", exact: "dark purple 30, light purple 40, ice blue 20" },
  endsOfNames,
  [warp],
);
const picks = {
  text: "8 dark purple [6 light purple; 6 ice blue; 6 light purple; 6 dark purple] 15 times, end 8 dark purple",
  legend: purples,
};
cited(
  "plaid: the picks of a bracketed list",
  { ...plaid, at: "weft color order", prints: "", exact: "376" },
  sequenceFromList,
  [picks],
  "total",
);
cited(
  "plaid: picks of each colour",
  { ...plaid, at: "weft color order", prints: "", exact: "dark purple 106, light purple 180, ice blue 90" },
  endsOfNames,
  [picks],
);
cited(
  "plaid: the bracket closes in the colour that ends the list",
  { ...plaid, at: "weft color order", prints: "", exact: "62 written, 61 seen" },
  stripesWrittenAndSeen,
  [picks],
);

const gamp = {
  text: "48 D/L, 4 green, 44 DD/LL, 4 green, 45 DD/L, 4 green, 48 DDDD/LLLL, 4 green, 44 DDD/L, 4 green, 45 DD/LLL, 4 green, 50 D/L/DD/L",
  legend: legendOf("D", "L", "green"),
};
cited(
  "colour-and-weave gamp in groups",
  { source: paradise2021, at: "Project 12", status: "read", prints: "348", exact: "348" },
  sequenceFromList,
  [gamp],
  "total",
);
cited(
  "gamp: ends of each colour",
  { source: paradise2021, at: "Project 12", status: "read", prints: "", exact: "D 181, L 143, green 24" },
  endsOfNames,
  [gamp],
);

const houndstooth = { text: "1 aqua, [8 aqua, 8 black] 3 times, 8 aqua, 1 aqua", legend: legendOf("aqua", "black") };
cited(
  "houndstooth with floating selvedges",
  { source: weaveAway2012, at: "warping", status: "read", prints: "aqua 34, black 24", exact: "aqua 34, black 24" },
  endsOfNames,
  [houndstooth],
);
cited(
  "houndstooth: the selvedges join the outer stripes",
  { source: weaveAway2012, at: "warping", status: "read", prints: "", exact: "9 written, 7 seen" },
  stripesWrittenAndSeen,
  [houndstooth],
);
cited(
  "asymmetric plaid",
  { source: weeFolkArt, at: "warp", status: "read", prints: "", exact: "P 30, W 18" },
  endsOfNames,
  [{ text: "21 P, 9 W, 3 P, 6 W, 3 P, 3 W, 3 P", legend: legendOf("P", "W") }],
);
cited(
  "shepherd's check",
  { source: textilesOfIndia, at: "shepherd's check", status: "read", prints: "", exact: "white 6, black 6" },
  endsOfNames,
  [{ text: "6 white, 6 black", legend: legendOf("white", "black") }],
);
cited(
  "glen check, two inches taken at 24 ends to the inch",
  { source: sutton, at: "glen check", status: "read", prints: "", exact: "black 48, white 48" },
  endsOfNames,
  [{ text: "[4 black, 4 white] 6 times, [2 black, 2 white] 12 times", legend: legendOf("black", "white") }],
);
cited(
  "warp-rep block of 15 alternations",
  { source: neilson, at: "first block", status: "read", prints: "30", exact: "30" },
  sequenceFromList,
  [{ text: "[1 turquoise, 1 lilac] 15 times", legend: legendOf("turquoise", "lilac") }],
  "total",
);
cited(
  "bands of 20 threads and an accidental, four to a colour",
  { source: weaveAway2013, at: "post of 2 January 2013", status: "read", prints: "84", exact: "84" },
  sequenceFromList,
  [{ text: "[20 band, 1 accidental] 4 times", legend: legendOf("band", "accidental") }],
  "total",
);
cited(
  "a threading repeat of three parts",
  { source: lunaticFringe, at: "first count", status: "read", prints: "86", exact: "86" },
  sequenceFromList,
  [{ text: "29 a, 29 b, 28 c", legend: legendOf("a", "b", "c") }],
  "total",
);
cited(
  "a total that leaves out the last edge",
  {
    source: durhamWeaver,
    at: "11 June 2014",
    status: "read",
    prints: "494",
    exact: "498",
    differs: "the words give 12 × 40 + 14 + 4 ends; the 4 at the far side were left out of the printed total",
  },
  sequenceFromList,
  [{ text: "[40 block] 12 times, 14 closing, 4 edge = 494", legend: legendOf("block", "closing", "edge") }],
  "total",
);
cited(
  "a blue border, a ground and the border turned about",
  {
    source: durhamWeaver,
    at: "15 June 2017",
    status: "read",
    prints: "572",
    exact: "574",
    differs: "the order as laid out gives 60 + 454 + 60 ends, two more than the printed total",
  },
  sequenceFromList,
  [
    {
      text:
        "10 white, 2 blue, 10 white, 4 blue, 8 white, 2 blue, 8 white, 4 blue, 10 white, 2 blue, " +
        "[22 white; 2 blue] 18 times, 22 white, " +
        "2 blue, 10 white, 4 blue, 8 white, 2 blue, 8 white, 4 blue, 10 white, 2 blue, 10 white",
      legend: legendOf("white", "blue"),
    },
  ],
  "total",
);

/** A chart whose columns were lost in the copy read: a total does not depend on their order. */
function chartTotal(rows: Readonly<Record<string, readonly number[]>>): number {
  const before = (index: number): number =>
    Object.values(rows)
      .slice(0, index)
      .reduce((sum, list) => sum + list.length, 0);
  const chart = Object.entries(rows).map(([colour, ends], index) => ({
    colour,
    ends: [...Array<number>(before(index)).fill(0), ...ends],
  }));
  return sequenceFromColourRows({ rows: chart, brackets: [], readFrom: "left", columnsOfTwo: "refused" }).ends;
}
const band = { source: durhamWeaver, at: "22 May 2020", status: "read" } as const;
cited("band of three colours charted in rows", { ...band, prints: "37", exact: "37" }, chartTotal, [
  { red: [2, 2, 2, 1, 1, 1, 1, 1, 1, 1, 1, 2, 2, 2], pink: [2, 2, 1, 1, 1, 1, 1, 1, 2, 2], blue: [1, 1, 1] },
]);
cited("band of four colours charted in rows", { ...band, prints: "59", exact: "59" }, chartTotal, [
  { white: [4, 4, 2, 2, 4, 4], blue: [4, 4, 2, 2, 2, 2, 4, 4], yellow: [2, 3, 2], pink: [4, 4] },
]);

/** Two rows of a band, open and heddled ends, taken in turn. */
function interleavedTotal(open: string, heddled: string): number {
  return sequenceFromEnds(Array.from(open).flatMap((colour, index) => [colour, heddled.charAt(index)])).ends;
}
cited(
  "inkle band of two interleaved rows",
  { source: degarmo, at: "designs", status: "read", prints: "54", exact: "54" },
  interleavedTotal,
  ["WWWBBBWWWBBBWWWBBBWWWBBBWWW", "WWWWWWBBBWWWBBBWWWBBBWWWWWW"],
);

const profile = {
  text: "4 E, 9 F, [2 A, 7 B, 4 C, 6 D, 4 E, 9 F] 3 times",
  legend: legendOf("A", "B", "C", "D", "E", "F"),
};
cited(
  "blocks of a profile in three repeats",
  {
    source: lynneRides2017,
    at: "5 April 2017",
    status: "read",
    prints: "A 6, B 21, C 12, D 18, E 16, F 36",
    exact: "E 16, F 36, A 6, B 21, C 12, D 18",
  },
  endsOfNames,
  [profile],
);
/** Ends of a repeat of blocks, so many ends to a block. */
function endsOfBlocks(blocks: readonly Stripe<string>[], endsPerBlock: number): number {
  return multiply({ sequence: sequence(blocks), by: endsPerBlock }).ends;
}
const blocks = (
  [
    ["A", 2],
    ["B", 7],
    ["C", 4],
    ["D", 6],
    ["E", 4],
    ["F", 9],
  ] as const
).map(([colour, ends]) => ({ colour, ends }));
cited(
  "ends in a repeat of 32 blocks of four",
  { source: lynneRides2017, at: "5 April 2017", status: "read", prints: "128", exact: "128" },
  endsOfBlocks,
  [blocks, 4],
);

/** The stripes of a list, each as many times as wide. */
function multiplied(widths: readonly number[], by: number): string {
  const made = sequence(widths.map((ends, index) => ({ colour: index, ends })));
  return multiply({ sequence: made, by })
    .runs.map(({ ends }) => ends)
    .join(" ");
}
cited(
  "a tartan multiplied by four",
  { source: elliot, at: "weaving", status: "read", prints: "8 24 32 128 32 24", exact: "8 24 32 128 32 24" },
  multiplied,
  [[2, 6, 8, 32, 8, 6], 4],
);

/** Ends counted one by one, gathered into stripes. */
function gathered(ends: string): string {
  return sequenceFromEnds(Array.from(ends))
    .runs.map(({ colour, ends: count }) => `${colour}${count}`)
    .join(" ");
}
cited(
  "ends counted one by one",
  { source: apostolico, at: "abstract", status: "read", prints: "a4 b4 c3 a1 b4 c2", exact: "a4 b4 c3 a1 b4 c2" },
  gathered,
  ["aaaabbbbcccabbbbcc"],
);
