import { law, stripes } from "#ci/law.js";
import { leastTime } from "#ci/processor-time.js";
import { refusalOf } from "#ci/refusal-of.js";
import fc from "fast-check";
import { expect, test } from "vitest";
import { everyEnd } from "../sequence/every-end.js";
import { fullSett, type Pivots } from "../sequence/full-sett.js";
import { item } from "../sequence/item.js";
import { sequence, type Stripe } from "../sequence/sequence.js";
import { colourRows } from "./colour-rows.js";
import { sequenceFromColourRows } from "./sequence-from-colour-rows.js";
import { sequenceFromList } from "./sequence-from-list.js";
import { settFromThreadCount } from "./sett-from-thread-count.js";
import { threadCount } from "./thread-count.js";
import { writtenList } from "./written-list.js";

const warps = stripes.map(sequence);
const letters = { A: "ash", K: "coal", M: "madder", W: "weld" };
const names = { "pale ash": "ash", coal: "coal", madder: "madder", "white 24s": "weld" };
const convention = fc.constantFrom<Pivots>("full count", "half count", "repeating");

law(32, "a sett written in letters is read back as it was, with its pivots", [warps, convention], (sett, pivots) => {
  fc.pre(sett.runs.length > 1 || pivots === "repeating");
  const read = settFromThreadCount({ text: threadCount({ sett, legend: letters, pivots }), legend: letters, pivots });
  expect(read.sett).toEqual(sett);
  expect(read.sett.written).toEqual(sett.written);
  expect(read.fullSett).toEqual(fullSett({ sett, pivots }));
});
law(
  32,
  "a list is read back as it was, written out or in brackets",
  [warps, fc.constantFrom("written out", "in brackets")],
  (made, repeats) => {
    const doubled = sequence([...made.written, ...made.written, ...made.written.slice(0, 2)]);
    const read = sequenceFromList({ text: writtenList({ sequence: doubled, legend: names, repeats }), legend: names });
    expect(read.sequence.written).toEqual(doubled.written);
    expect(read.difference).toBe(0);
  },
);
law(32, "a list of groups is read back as it was", [warps], (made) => {
  const doubled = sequence([...made.written, ...made.written, ...made.written]);
  const read = sequenceFromList({
    text: writtenList({ sequence: doubled, legend: letters, repeats: "as groups" }),
    legend: letters,
  });
  expect(read.sequence.written).toEqual(doubled.written);
});
law(
  32,
  "a chart of colour rows is read back as it was, from either side",
  [warps, fc.constantFrom("left", "right")],
  (made, readFrom) => {
    const rows = colourRows({ sequence: made, readFrom });
    expect(sequenceFromColourRows({ rows, brackets: [], readFrom, columnsOfTwo: "refused" }).written).toEqual(
      made.written,
    );
  },
);

const sett = (text: string, pivots: Pivots) => settFromThreadCount({ text, legend: letters, pivots });
test("one sett, in every form the trade writes it", () => {
  const runs = sett("K4 M24 A24 W4", "full count").fullSett.runs;
  for (const text of ["K/4 M24 A24 W/4", "/K4 M24 A24 W4/", "[K/4] M24 A24 [W/4]", "K/4, M24, A24, W/4"]) {
    expect(sett(text, "full count").fullSett.runs).toEqual(runs);
  }
  for (const text of ["K2* M24 A24 W2*", "K/2 M24 A24 W/2", "K2 M24 A24 W2"]) {
    expect(sett(text, "half count").fullSett.runs).toEqual(runs);
  }
  expect(sett("...K4 M24 A24 W4...", "repeating").fullSett.ends).toBe(56);
  expect(sett("… K4 M24 A24 W4 …", "repeating").fullSett.ends).toBe(56);
});
test.each<[string, string, Pivots, string, number | null]>([
  ["no text", "", "full count", "empty", null],
  ["a letter without a legend", "K/4 R24 W/4", "full count", "unknown-letter", 5],
  ["a count without a letter", "K/4 24 W/4", "full count", "unreadable", 5],
  ["a fraction of an end", "K/4 M2.5 W/4", "full count", "unreadable", 5],
  ["no ends", "K/4 M0 W/4", "full count", "unreadable", 5],
  ["a pivot in the middle", "K/4 M/24 W/4", "full count", "unreadable", 5],
  ["one pivot marked and the other not", "K/4 M24 W4", "full count", "unreadable", null],
  ["two pivots marked in two ways", "K/4 M24 W4*", "half count", "unreadable", null],
  ["half pivots read as whole ones", "K4* M24 W4*", "full count", "unreadable", null],
  ["pivots in a sett said to repeat straight on", "K/4 M24 W/4", "repeating", "unreadable", null],
  ["dots in a sett said to reverse", "... K4 M24 W4 ...", "full count", "unreadable", null],
  ["dots and pivots at once", "... K/4 M24 W/4 ...", "repeating", "unreadable", 5],
  ["a stroke between two letters", "K/W24 M4", "full count", "unreadable", 1],
  ["a half sett of one stripe", "K/4", "full count", "does-not-fit", null],
])("%s is refused", (_, text, pivots, code, position) => {
  expect(refusalOf(() => sett(text, pivots))).toMatchObject(position === null ? { code } : { code, position });
});
test("a half sett without a word on its pivots is refused", () => {
  expect(refusalOf(() => settFromThreadCount({ text: "K/4 W/4", legend: letters } as never)).code).toBe("missing");
});

const list = (text: string) => sequenceFromList({ text, legend: { a: "ash", k: "coal", "pale ash": "weld" } });
test("brackets within brackets, and the ways a number of times is written", () => {
  expect(list("[2 a, [1 k; 1 a] x2] 3 times, end 4 k").total).toBe(3 * 6 + 4);
  expect(list("[2 a, 1 k] ×4").total).toBe(12);
  expect(list("[2 a, 1 k] 4 x").total).toBe(12);
  expect(list("8 pale   ash, 2 a,").sequence.runs).toEqual([
    { colour: "weld", ends: 8 },
    { colour: "ash", ends: 2 },
  ]);
});
test("an item a line, and names that are the colours themselves", () => {
  const typed = "24 linen\n[4 madder\r\n2 pale ash] 2 times\n";
  const { sequence: read, total } = sequenceFromList({ text: typed });
  expect(read.runs.map(({ colour, ends }) => [colour, ends])).toEqual([
    ["linen", 24],
    ["madder", 4],
    ["pale ash", 2],
    ["madder", 4],
    ["pale ash", 2],
  ]);
  expect(total).toBe(24 + 2 * 6);
  const long = refusalOf(() => sequenceFromList({ text: `4 ${"m".repeat(41)}` }));
  expect(long).toMatchObject({ code: "unreadable", path: ["text"], position: 1 });
  expect(refusalOf(() => sequenceFromList({ text: "4 a", legend: undefined } as never)).code).toBe("missing");
  expect(refusalOf(() => sequenceFromList(undefined as never)).code).toBe("missing");
});
test("a list whose total is wrong is read, and both totals are told", () => {
  expect(list("20 a, 2 k = 24 ends in the pattern")).toMatchObject({ total: 22, printedTotal: 24, difference: 2 });
  expect(list("20 a, 2 k")).toMatchObject({ total: 22, printedTotal: null, difference: null });
});
test("the written form is kept: a bracket that closes in the colour that follows", () => {
  const read = list("[6 a; 6 k] 15 times, end 8 k").sequence;
  expect([read.written.length, read.runs.length]).toEqual([31, 30]);
});
test.each<[string, string, string, number | null]>([
  ["no text", " ", "empty", null],
  ["a name without a number", "20 a, black", "unreadable", 7],
  ["an unknown name", "20 a, 2 black", "unknown-letter", 7],
  ["no ends", "20 a, 0 k", "unreadable", 7],
  ["a bracket without a number of times", "[2 a, 1 k], 3 a", "unreadable", 10],
  ["a bracket left open", "[2 a, 1 k", "unreadable", 9],
  ["a bracket never opened", "2 a] 3 times", "unreadable", 4],
  ["a bracket at the very end", "[2 a]", "unreadable", 5],
  ["a bracket with nothing in it", "[] 3 times", "unreadable", 2],
  ["a total that is no number", "2 a = many", "unreadable", 5],
  ["no total after the sign", "2 a =", "unreadable", 5],
  ["something after the total", "2 a = 2, 3 k", "unreadable", 5],
  ["a group that does not fill its ends", "47 a/k", "does-not-fit", 1],
  ["a group of mixed letters", "48 ak/k", "unreadable", 1],
  ["a group with an unknown letter", "48 a/z", "unknown-letter", 1],
  ["more ends than any loom holds", "99999999 a", "too-long", null],
  ["brackets that ask for more ends than are read from text", "[[[1 a] 99 times] 99 times] 99 times", "too-long", null],
  ["brackets that multiply past every loom", "[[[1 a] 1000 times] 1000 times] 1000 times", "too-long", null],
])("%s is refused", (_, text, code, position) => {
  expect(refusalOf(() => list(text))).toMatchObject(position === null ? { code } : { code, position });
});
test("a list that only ever opens brackets, or a megabyte of it, is refused at once", () => {
  expect(refusalOf(() => list("[".repeat(9000))).code).toBe("unreadable");
  for (const text of ["20 a, ".repeat(200_000), "[".repeat(1_000_000), " ".repeat(1_000_000)]) {
    expect(refusalOf(() => list(text)).code).toBe("too-long");
    expect(refusalOf(() => sett(text, "full count")).code).toBe("too-long");
  }
});
test("hostile text near the limit is read or refused in a moment", () => {
  const texts = [
    "1 a a".repeat(2000),
    "48 " + "a/".repeat(4990),
    "K4".repeat(5000),
    "a ".repeat(5000),
    "1 a,".repeat(2500),
    "[1 a]x9".repeat(1400),
  ];
  const readAll = (): void => {
    for (const text of texts)
      for (const read of [() => list(text), () => sett(text, "repeating")]) {
        try {
          read();
        } catch (error) {
          expect(error).toHaveProperty("code");
        }
      }
  };
  expect(leastTime(readAll, 2)).toBeLessThan(2000);
});
test.each<[string, unknown, string]>([
  ["a legend that is a list", ["ash"], "wrong-kind"],
  ["an empty legend", {}, "empty"],
  ["a name that begins with a figure", { "2nd": "ash" }, "unreadable"],
  ["a name with a comma", { "a,b": "ash" }, "unreadable"],
  ["a name without a colour", { a: undefined }, "unreadable"],
  ["no legend", null, "missing"],
])("%s is refused", (_, legend, code) => {
  expect(refusalOf(() => sequenceFromList({ text: "2 a", legend: legend as never })).code).toBe(code);
});
test("a letter is only what the legend itself says", () => {
  expect(refusalOf(() => sequenceFromList({ text: "2 constructor", legend: { a: "ash" } })).code).toBe(
    "unknown-letter",
  );
});
test("a colour without a letter cannot be written", () => {
  const made = sequence([
    { colour: "ash", ends: 2 },
    { colour: "rye", ends: 2 },
  ]);
  expect(refusalOf(() => threadCount({ sett: made, legend: letters, pivots: "repeating" })).code).toBe(
    "unknown-letter",
  );
});

const chart = {
  rows: [
    { colour: "red", ends: [2, 0, 2] },
    { colour: "tan", ends: [0, 4] },
  ],
  brackets: [],
  readFrom: "left",
  columnsOfTwo: "refused",
} as const;
test("a column of two rows is threads wound in pairs where the chart says so, the upper row first", () => {
  const rows = [
    { colour: "red", ends: [2, 3] },
    { colour: "tan", ends: [0, 3] },
  ];
  const read = (readFrom: "left" | "right") =>
    sequenceFromColourRows({ rows, brackets: [], readFrom, columnsOfTwo: "wound in pairs" });
  expect(everyEnd(read("left")).join(" ")).toBe("red red red tan red tan red tan");
  expect(everyEnd(read("right")).join(" ")).toBe("tan red tan red tan red red red");
  const bracketed = { rows, brackets: [{ from: 1, to: 2, times: 3 }], readFrom: "left" } as const;
  expect(sequenceFromColourRows({ ...bracketed, columnsOfTwo: "wound in pairs" }).ends).toBe(24);
});
test.each<[string, readonly (readonly number[])[], string]>([
  ["a pair of unlike counts", [[2], [3]], "does-not-fit"],
  ["three rows", [[2], [2], [2]], "does-not-fit"],
  ["no row", [[0], [0]], "does-not-fit"],
  ["more than any warp", [[1e15], [1e15]], "too-long"],
])("%s in a column wound in pairs is refused", (_, counts, code) => {
  const rows = counts.map((ends, index) => ({ colour: `yarn ${index}`, ends }));
  const chart = { rows, brackets: [], readFrom: "left", columnsOfTwo: "wound in pairs" } as const;
  expect(refusalOf(() => sequenceFromColourRows(chart)).code).toBe(code);
});
test.each([
  ["K/4 R24 K24 Y/4", "K/4R24K24Y/4"],
  ["/K4 R24 Y4/", "/K4R24Y4/"],
  ["[K/4] R24 [Y/4]", "[K/4]R24[Y/4]"],
])("%s is read without its spaces", (spaced, close) => {
  const legend = { K: "black", R: "red", Y: "yellow" };
  const read = (text: string) => settFromThreadCount({ text, legend, pivots: "full count" }).sett.written;
  expect(read(close)).toEqual(read(spaced));
});
test("a bracket over columns repeats them, and a chart may be read from the right", () => {
  const read = sequenceFromColourRows({ ...chart, brackets: [{ from: 1, to: 2, times: 21 }] });
  expect([read.ends, read.runs.length]).toEqual([21 * 6 + 2, 43]);
  const turned = sequenceFromColourRows({
    rows: [
      { colour: "red", ends: [2, 0] },
      { colour: "tan", ends: [0, 4] },
    ],
    brackets: [],
    readFrom: "right",
    columnsOfTwo: "refused",
  });
  expect(turned.runs[0]).toEqual({ colour: "tan", ends: 4 });
});
test.each<[string, unknown, string]>([
  ["a column with no colour", { ...chart, rows: [{ colour: "red", ends: [2, 0, 2] }] }, "does-not-fit"],
  [
    "a column with two colours",
    {
      ...chart,
      rows: [
        { colour: "red", ends: [2] },
        { colour: "tan", ends: [2] },
      ],
    },
    "does-not-fit",
  ],
  [
    "brackets that overlap",
    {
      ...chart,
      brackets: [
        { from: 1, to: 2, times: 2 },
        { from: 2, to: 3, times: 2 },
      ],
    },
    "out-of-range",
  ],
  ["a bracket outside the chart", { ...chart, brackets: [{ from: 3, to: 4, times: 2 }] }, "out-of-range"],
  ["a bracket that ends before it begins", { ...chart, brackets: [{ from: 3, to: 2, times: 2 }] }, "out-of-range"],
  ["a bracket past every loom", { ...chart, brackets: [{ from: 1, to: 3, times: 1e15 }] }, "too-long"],
  ["a chart read from no side", { rows: chart.rows, brackets: [], columnsOfTwo: "refused" }, "missing"],
  ["a blank that is not 0", { ...chart, rows: [{ colour: "red", ends: [2, null] }] }, "missing"],
])("%s is refused", (_, input, code) => {
  expect(refusalOf(() => sequenceFromColourRows(input as never)).code).toBe(code);
});

const dark = (ends: number): Stripe<string> => ({ colour: "dark", ends });
const light = (ends: number): Stripe<string> => ({ colour: "light", ends });
const mid = (ends: number): Stripe<string> => ({ colour: "mid", ends });
test.each<[string, readonly Stripe<string>[], string]>([
  [
    "a group and what follows it",
    [dark(4), light(4), dark(4), light(4), dark(4), light(4), dark(8)],
    "[4 dark, 4 light] 3 times, 8 dark = 32 ends",
  ],
  [
    "a group that begins later",
    [mid(6), dark(4), light(2), dark(4), light(2)],
    "6 mid, [4 dark, 2 light] 2 times = 18 ends",
  ],
  [
    "a group of three",
    [dark(4), light(2), mid(1), dark(4), light(2), mid(1)],
    "[4 dark, 2 light, 1 mid] 2 times = 14 ends",
  ],
  [
    "the shorter of two groups that cover as much",
    [dark(4), light(2), dark(4), light(2), dark(4), light(2), dark(4), light(2)],
    "[4 dark, 2 light] 4 times = 24 ends",
  ],
  [
    "the group that covers more, though a shorter one comes first",
    [dark(4), light(2), dark(4), light(2), mid(1), dark(4), light(2), dark(4), light(2), mid(1)],
    "[4 dark, 2 light, 4 dark, 2 light, 1 mid] 2 times = 26 ends",
  ],
  ["nothing that repeats", [dark(4), light(2), dark(3)], "4 dark, 2 light, 3 dark = 9 ends"],
])("brackets hold %s", (_, stripes, text) => {
  const names = { dark: "dark", light: "light", mid: "mid" };
  expect(writtenList({ sequence: sequence(stripes), legend: names, repeats: "in brackets" })).toBe(text);
});
test("a bracket of 60 stripes is found, and no longer one", () => {
  const colours = ["dark", "light", "mid"];
  const group = (many: number): readonly Stripe<string>[] =>
    Array.from({ length: many }, (_, at) => ({ colour: item(colours, at % 3), ends: at + 1 }));
  const brackets = (many: number): boolean =>
    writtenList({
      sequence: sequence([...group(many), ...group(many)]),
      legend: { dark: "dark", light: "light", mid: "mid" },
      repeats: "in brackets",
    }).includes("[");
  expect([brackets(60), brackets(63)]).toEqual([true, false]);
});
test("groups are written by letters where names are letters and widths single figures", () => {
  const letters = { D: "dark", L: "light" };
  const written = (stripes: readonly Stripe<string>[]): string =>
    writtenList({ sequence: sequence(stripes), legend: letters, repeats: "as groups" });
  expect(written([dark(4), light(2), dark(4), light(2), dark(8)])).toBe("12 DDDD/LL, 8 D = 20 ends");
  expect(written([dark(10), light(2), dark(10), light(2)])).toBe("[10 D, 2 L] 2 times = 24 ends");
  expect(writtenList({ sequence: sequence([dark(4), light(2)]), legend: letters, repeats: "written out" })).toBe(
    "4 D, 2 L = 6 ends",
  );
});
test.each([
  ["full count", "D/4 L24 D8 L/6"],
  ["half count", "D4* L24 D8 L6*"],
  ["repeating", "... D4 L24 D8 L6 ..."],
] as const)("a sett with the pivots at %s is written with the marks of such pivots", (pivots, text) => {
  const sett = sequence([dark(4), light(24), dark(8), light(6)]);
  expect(threadCount({ sett, legend: { D: "dark", L: "light" }, pivots })).toBe(text);
});
test("brackets over a chart may be given in any order, and over one column", () => {
  const rows = [
    { colour: "dark", ends: [4, 0, 2] },
    { colour: "light", ends: [0, 3, 0] },
  ];
  const brackets = [
    { from: 3, to: 3, times: 2 },
    { from: 1, to: 2, times: 2 },
  ];
  const made = sequenceFromColourRows({ rows, brackets, readFrom: "left", columnsOfTwo: "refused" });
  expect(made.written).toEqual([dark(4), light(3), dark(4), light(3), dark(2), dark(2)]);
});
