// Every refusal in so many words: what was expected, what was received, what to do.
import { refusalOf } from "#ci/refusal-of.js";
import { expect, test } from "vitest";
import {
  apportionment,
  balanced,
  colourRows,
  countDisagreements,
  edited,
  evenSpread,
  fibonacciStripes,
  fittedSides,
  fullSett,
  halfSett,
  hatchedSvg,
  letteredSvg,
  likeness,
  randomOrder,
  recolour,
  repeat,
  rotate,
  scale,
  sequence,
  sequenceFromColourRows,
  sequenceFromList,
  sequenceFromShares,
  settFromThreadCount,
  shortestEdit,
  slice,
  snap,
  StripeError,
  stripesInGroup,
  stripesSvg,
  textStrip,
  threadCount,
  writtenList,
} from "../index.js";

const ash = sequence([{ colour: "ash", ends: 9 }]);
const three = sequence([
  { colour: "ash", ends: 4 },
  { colour: "coal", ends: 3 },
  { colour: "madder", ends: 2 },
]);
const legend = { A: "ash", C: "coal" };
const paints = new Map([["ash", { fill: "#ccc", letter: "A", name: "ash" }]]);
const drawn = { sequence: ash, paints, height: 40, id: "warp", title: "Warp", description: "One stripe" };
const list = (text: string) => () => sequenceFromList({ text, legend: { ash: "ash", D: "dark", L: "light" } });
const count = (text: string, pivots: "full count" | "half count" | "repeating") => () =>
  settFromThreadCount({ text, legend, pivots });

test.each<[() => unknown, string]>([
  [() => sequence("ash" as never), 'sequence({ stripes }): expected a list, received "ash". Put it in [ ].'],
  [() => sequence([]), "sequence({ stripes }): expected at least one item, received a list of 0. Put one in."],
  [
    () => sequence([{ colour: "ash", ends: 2.5 }]),
    "sequence({ stripes[0].ends }): expected a whole number of 1 or more, received 2.5. Give the count itself.",
  ],
  [
    () => sequence([{ colour: "ash", ends: 5_000_001 }]),
    "sequence(…): expected at most 5000000 ends, received 5000001. Look for a slip in a count.",
  ],
  [() => rotate([] as never), "rotate(…): expected an object, received a list of 0. Give sequence, by."],
  [
    () => rotate({ sequence: ash, by: 1, from: 2 } as never),
    'rotate({ from }): expected no such field, received "from". Give sequence, by.',
  ],
  [
    () => repeat({ sequence: {} as never, times: 1.5 }),
    "repeat({ sequence }): expected a sequence, received object. Make one with sequence([…]).\n" +
      "repeat({ times }): expected a whole number of 0 or more, received 1.5. Give the count itself.",
  ],
  [
    () => slice({ sequence: ash, after: 0, upTo: 12 }),
    "slice({ upTo }): expected a whole number from 0 to 9, received 12. Give the count itself.",
  ],
  [
    () => recolour({ sequence: three, colours: new Map([["ash", "oak"]]) }),
    'recolour({ colours }): expected a new colour for every old one, received "coal". Name it too, even if it stays as it is.',
  ],
  [
    () => recolour({ sequence: three, colours: { ash: "oak" } as never }),
    "recolour({ colours }): expected a Map from colours, received object. Write new Map([[colour, …]]).",
  ],
  [
    () => fullSett({ sett: ash, pivots: "full count" }),
    'fullSett({ sett }): expected a half sett of two stripes or more, received one stripe of 9 ends. Cloth of one colour has no pivots: say "repeating".',
  ],
  [
    () => fullSett({ sett: three, pivots: "both" as never }),
    'fullSett({ pivots }): expected "full count" or "half count" or "repeating", received "both". Choose one.',
  ],
  [
    () => halfSett({ sett: three, pivots: "full count" }),
    "halfSett({ sett }): expected a sett that reads the same backwards from each of two pivots, received a repeat of 3 stripes that does not. Write it out in full.",
  ],
  [
    () =>
      halfSett({
        sett: sequence([
          { colour: "ash", ends: 4 },
          { colour: "coal", ends: 3 },
        ]),
        pivots: "half count",
      }),
    "halfSett({ sett }): expected an even pivot, to be halved, received 3. Write the sett with full pivots, or make the pivot even.",
  ],
  [
    list(" "),
    'sequenceFromList({ text }): expected a text of 1 to 10000 characters, received " ". Put it in quotation marks.',
  ],
  [
    list("4 ash, 3 oak"),
    'sequenceFromList({ text }): expected ash or D or L, as in the legend, received "oak" at character 8. Mend the text there.',
  ],
  [
    list("4 ash, some"),
    'sequenceFromList({ text }): expected a number of ends and a name, such as 20 pink, received "some" at character 8. Mend the text there.',
  ],
  [
    list("[4 ash] often"),
    'sequenceFromList({ text }): expected a number of times after a bracket with ends in it, "] 15 times", received "] often" at character 7. Mend the text there.',
  ],
  [
    list("4 ash = 4 ends, 2 more"),
    'sequenceFromList({ text }): expected a total and no more, received "= 4 ends, 2 more" at character 7. Mend the text there.',
  ],
  [
    list("[4 ash"),
    'sequenceFromList({ text }): expected stripes, and every bracket closed, received "the end of the text" at character 6. Mend the text there.',
  ],
  [
    () => sequenceFromList({ text: "4 ash", legend: "ash" as never }),
    'sequenceFromList({ legend }): expected an object from letters to colours, received "ash". Write { K: "black" }.',
  ],
  [
    () =>
      sequenceFromColourRows({
        rows: [{ colour: "ash", ends: [0] }],
        brackets: [],
        readFrom: "left",
        columnsOfTwo: "refused",
      }),
    "sequenceFromColourRows({ rows }): expected ends in one row, received ends in 0 rows at column 1. A column is one stripe: write 0 in its other rows.",
  ],
  [
    list("6 DL/L"),
    'sequenceFromList({ text }): expected one letter over and over, received "DL" at character 1. Mend the text there.',
  ],
  [
    list("7 D/L"),
    'sequenceFromList({ text }): expected a whole number of groups, received "7 D/L" at character 1. Mend the text there.',
  ],
  [
    () => sequenceFromList({ text: "4 ash", legend: {} }),
    "sequenceFromList({ legend }): expected at least one letter, received object. Say what each stands for.",
  ],
  [
    () => sequenceFromList({ text: "4 ash", legend: { "4a": "ash" } }),
    'sequenceFromList({ legend }): expected a name that begins with no figure and holds none of , ; [ ] = /, received "4a". Name every colour so.',
  ],
  [
    count("A/4 C/3 A/4", "full count"),
    'settFromThreadCount({ text }): expected letters and a count, such as K24, with marks only at the pivots, received "C/3" at character 5. Mend the text there.',
  ],
  [
    count("A/4 C3", "full count"),
    "settFromThreadCount({ pivots }): expected both pivots marked alike, or neither, received full count. Look up which the book means.",
  ],
  [
    count("A/4 C/3", "repeating"),
    "settFromThreadCount({ pivots }): expected full count or half count, received repeating. Look up which the book means.",
  ],
  [
    () => threadCount({ sett: three, legend, pivots: "repeating" }),
    'threadCount({ legend }): expected a letter for every colour of the sequence, received "madder". Add it to the legend.',
  ],
  [
    () => threadCount({ sett: ash, legend: { Four: "ash" }, pivots: "repeating" }),
    'threadCount({ legend }): expected one to three letters, received "Four". Name every colour so.',
  ],
  [
    () => writtenList({ sequence: ash, legend: { ash: "ash" }, repeats: "long" as never }),
    'writtenList({ repeats }): expected "written out" or "in brackets" or "as groups", received "long". Choose one.',
  ],
  [
    () =>
      sequenceFromColourRows({
        rows: [{ colour: "ash", ends: [4, 2] }],
        brackets: [{ from: 1, to: 3, times: 2 }],
        readFrom: "left",
        columnsOfTwo: "refused",
      }),
    "sequenceFromColourRows({ brackets }): expected brackets side by side within columns 1 to 2, received columns 1 to 3. Count the columns from the left, from 1.",
  ],
  [
    () => colourRows({ sequence: ash, readFrom: "top" as never }),
    'colourRows({ readFrom }): expected "left" or "right", received "top". Choose one.',
  ],
  [
    () => balanced({ repeat: three, times: 2 }),
    "balanced({ repeat }): expected a repeat that reverses at one of its stripes, received a repeat of 3 stripes that does not. Mirror it instead, or add borders.",
  ],
  [
    () => fittedSides({ sequence: three, ends: 14, step: 2, oddStep: "left" }),
    "fittedSides({ ends }): expected 9 ends and a whole number of steps of 2, received 14. Choose the nearest that fits, or a smaller step.",
  ],
  [
    () => scale({ sequence: three, ends: 25, step: 2, smallest: 0 }),
    "scale({ ends }): expected a multiple of 2, received 25. Add or drop ends first.",
  ],
  [
    () => apportionment({ shares: [3, 2, 1], total: 20, smallest: 7 }),
    "apportionment({ smallest }): expected at most 6, received 7. Allow smaller parts, or leave a share out.",
  ],
  [
    () => snap({ sequence: three, step: 3, smallest: 4 }),
    "snap({ smallest }): expected 3 stripes of 6 ends within 9, received 4. Leave a stripe out.",
  ],
  [
    () => evenSpread({ colour: "ash", ground: "coal", marks: 9, ends: 8 }),
    "evenSpread({ marks }): expected at most the 8 ends, received 9. Fewer marks, or more ends.",
  ],
  [
    () => fibonacciStripes({ colours: ["ash", "coal"], numbers: [3, 4] }),
    "fibonacciStripes({ numbers[1] }): expected one of 1, 2, 3, 5, 8, 13, 21, 34 …, received 4. Use the nearest; multiply the finished stripes for a coarser step.",
  ],
  [
    () => edited({ sequence: three, edit: { changed: 1, steps: [{ change: "keep", colour: "ash", ends: 4 }] } }),
    "edited({ edit }): expected an edit of this very sequence, received 0 ends after end 4 that it does not have. Find the edit from this sequence.",
  ],
  [
    () => randomOrder({ seed: 1, ends: 30, colours: [{ colour: "ash", atLeast: 2, atMost: 8 }], longestRun: 3 }),
    "randomOrder({ colours }): expected each colour once, in limits that can be kept, received room for 2 to 8 ends. Widen a limit, or allow a longer run.",
  ],
  [
    () => likeness({ first: ash, second: ash, upTo: ["size" as never] }),
    'likeness({ upTo[0] }): expected "rotation" or "reversal" or "scale" or "recolouring", received "size". Choose one.',
  ],
  [
    () =>
      shortestEdit({
        from: sequence([{ colour: "ash", ends: 30_000 }]),
        to: sequence([{ colour: "coal", ends: 20_000 }]),
      }),
    "shortestEdit({ from }): expected warps that differ over fewer ends, 400000000 pairs of ends at most, received 30000 ends against 20000. Compare them part by part.",
  ],
  [
    () => stripesSvg({ ...drawn, id: "1" }),
    'stripesSvg({ id }): expected a letter, then letters, figures and hyphens, received "1". Write it that way.',
  ],
  [
    () => letteredSvg({ ...drawn, title: "" }),
    'letteredSvg({ title }): expected 1 to 200 printable characters, received "". Write it that way.',
  ],
  [
    () => stripesSvg({ ...drawn, paints: new Map([["ash", { fill: "url(#x)", letter: "A", name: "ash" }]]) }),
    'stripesSvg({ paints.ash.fill }): expected a plain colour, such as #a03020, received "url(#x)". Write it that way.',
  ],
  [
    () => hatchedSvg({ ...drawn, paints: new Map() }),
    "hatchedSvg({ paints }): expected 1 to 11 paints, received 0. More hatches could not be told apart: use letters.",
  ],
  [
    () => textStrip({ sequence: ash, letters: new Map([["ash", "as"]]), endsPerLine: 40 }),
    'textStrip({ letters.ash }): expected one printable character, received "as". Write it that way.',
  ],
])("a refusal in so many words, %#", (call, words) => {
  expect(refusalOf(call).message).toBe(words);
});

test.each<[() => unknown, string, string, string]>([
  [() => sequence([{ colour: "ash" } as never]), "missing", "stripes.0.ends", "nothing"],
  [list("4 ash, [4 ash"), "unreadable", "text", '"the end of the text" at character 13'],
  [list(","), "unreadable", "text", '"the end of the text" at character 1'],
  [list("[4 ash] 0 times"), "unreadable", "text", '"] 0 times" at character 7'],
  [list("100001 ash"), "too-long", "", "100001"],
  [list("9999999 D/L"), "too-long", "", "9999999"],
  [() => sequenceFromList({ text: "4 ash", legend: [] as never }), "wrong-kind", "legend", "a list of 0"],
  [
    () =>
      sequenceFromColourRows({
        rows: [
          { colour: "ash", ends: [4, 2] },
          { colour: "coal", ends: [0, 2] },
        ],
        brackets: [],
        readFrom: "left",
        columnsOfTwo: "refused",
      }),
    "does-not-fit",
    "rows",
    "ends in 2 rows at column 2",
  ],
  [() => snap({ sequence: three, step: 4, smallest: 4 }), "does-not-fit", "ends", "9"],
  [() => fibonacciStripes({ colours: ["ash"], numbers: [4, 3] }), "out-of-range", "numbers.0", "4"],
  [
    () => countDisagreements({ sequence: three, printedTotal: null, printedOfColour: new Map([["ash", 2.5]]) }),
    "not-whole",
    "printedOfColour.0",
    "2.5",
  ],
  [
    () => edited({ sequence: three, edit: { changed: 1, steps: [{ change: "take out", colour: "ash", ends: 12 }] } }),
    "does-not-fit",
    "edit",
    "12 ends after end 0 that it does not have",
  ],
  [
    () => edited({ sequence: three, edit: { changed: 1, steps: [{ change: "take out", colour: "ash", ends: 6 }] } }),
    "does-not-fit",
    "edit",
    "6 ends after end 0 that it does not have",
  ],
  [
    () => randomOrder({ seed: -1, ends: 8, colours: [{ colour: "ash", atLeast: 2, atMost: 8 }], longestRun: 8 }),
    "out-of-range",
    "seed",
    "-1",
  ],
  [
    () => edited({ sequence: ash, edit: { changed: 0, steps: [{ change: "keep", colour: "coal", ends: 9 }] } }),
    "does-not-fit",
    "edit",
    "9 ends after end 0 that it does not have",
  ],
  [() => stripesInGroup({ sequence: three, firstEnd: 4, lastEnd: 10 }), "out-of-range", "lastEnd", "10"],
  [
    () => countDisagreements({ sequence: three, printedTotal: "9" as never, printedOfColour: new Map() }),
    "wrong-kind",
    "printedTotal",
    '"9"',
  ],
  [
    () => sequenceFromShares({ stripes: [{ colour: "ash", share: 1 }], ends: 9, step: 2, smallest: 0 }),
    "does-not-fit",
    "ends",
    "9",
  ],
])("a refusal of words that stand above, %#", (call, code, place, received) => {
  const refused = refusalOf(call);
  expect([refused.code, refused.path.join("."), refused.received]).toEqual([code, place, received]);
});

test("a refusal is a StripeError by name, with its first fault for its own", () => {
  const refused = refusalOf(() => rotate({ sequence: ash, by: 0.5, from: 2 } as never));
  expect(refused).toBeInstanceOf(StripeError);
  expect(refused.name).toBe("StripeError");
  expect(refused.faults.map(({ path }) => path)).toEqual([["by"], ["from"]]);
  expect(refused).toMatchObject(refused.faults[0]);
});

test("a text, a list or an input just within its bounds is taken", () => {
  const longest = `4 ${"a".repeat(40)}${" ".repeat(10_000 - 42)}`;
  expect(longest).toHaveLength(10_000);
  expect(sequenceFromList({ text: longest, legend: { ["a".repeat(40)]: 1 } }).total).toBe(4);
  expect(refusalOf(() => sequenceFromList({ text: `${longest} `, legend: { a: 1 } })).code).toBe("too-long");
  expect(refusalOf(() => sequenceFromList({ text: 12 as never, legend: { a: 1 } })).code).toBe("wrong-kind");
  expect(sequence([{ colour: "ash", ends: 5_000_000 }]).ends).toBe(5_000_000);
});
