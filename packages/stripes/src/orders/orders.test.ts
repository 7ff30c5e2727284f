import { cited } from "#ci/cited.js";
import { law, upTo } from "#ci/law.js";
import { refusalOf } from "#ci/refusal-of.js";
import { becker, dupras2011, evenRhythms, toussaint2005 } from "#ci/sources.js";
import fc from "fast-check";
import { expect, test } from "vitest";
import { likeness } from "../comparing/likeness.js";
import { totalsOf } from "../sequence/totals.js";
import { everyEnd } from "../sequence/every-end.js";
import { join } from "../sequence/join.js";
import { mirror } from "../sequence/mirror.js";
import { sequenceFromEnds } from "../sequence/sequence-from-ends.js";
import { evenSpread } from "./even-spread.js";
import { fibonacciStripes } from "./fibonacci-stripes.js";
import { gradedBlend } from "./graded-blend.js";
import { randomOrder } from "./random-order.js";

/** An even spread written with x for a mark and - for the ground. */
function spreadPattern(marks: number, ends: number): string {
  return everyEnd(evenSpread({ colour: "x", ground: "-", marks, ends })).join("");
}
/** Whether an even spread is a printed pattern begun at another place. */
function isSpread(pattern: string): boolean {
  const printed = sequenceFromEnds(Array.from(pattern));
  const marks = totalsOf(printed).get("x") ?? 0;
  const ours = evenSpread({ colour: "x", ground: "-", marks, ends: printed.ends });
  return likeness({ first: ours, second: printed, upTo: ["rotation"] }) !== null;
}
/** For every end, how many marks stand before its own. */
function groupsOfEnds(marks: number, ends: number): string {
  let group = -1;
  return Array.from(spreadPattern(marks, ends))
    .map((sign) => (sign === "x" ? ++group : group))
    .join(",");
}

cited(
  "7 ends spread over 16",
  { source: evenRhythms, at: "topic 2016", status: "read", prints: "x--x-x-x--x-x-x-", exact: "x--x-x-x--x-x-x-" },
  spreadPattern,
  [7, 16],
);
cited(
  "8 ends dealt to 3 places",
  {
    source: evenRhythms,
    at: "topic 2016, floor(i*3/8)",
    status: "read",
    prints: "0 0 0 1 1 1 2 2",
    exact: "0,0,0,1,1,1,2,2",
  },
  groupsOfEnds,
  [3, 8],
);
cited(
  "5 marks over 12, rounded positions 0 2 5 7 10",
  { source: dupras2011, at: "message of 26 May 2011", status: "read", prints: "0 2 5 7 10", exact: "true" },
  isSpread,
  ["x-x--x-x--x-"],
);
cited(
  "3 marks over 8",
  { source: becker, at: "E(3,8)", status: "read", prints: "1 0 0 1 0 0 1 0", exact: "x--x--x-" },
  spreadPattern,
  [3, 8],
);
for (const [title, pattern] of [
  ["5 marks over 8", "x-xx-xx-"],
  ["5 marks over 16", "x--x--x--x--x---"],
  ["7 marks over 12", "x-xx-x-xx-x-"],
] as const) {
  cited(
    title,
    {
      source: toussaint2005,
      at: "recalled pattern",
      status: "from memory",
      prints: pattern,
      exact: "true",
    },
    isSpread,
    [pattern],
  );
}

test("law 30: any two windows of an even spread differ by one at most, for all sizes up to 24", () => {
  for (let ends = 1; ends <= 24; ends++) {
    for (let marks = 0; marks <= ends; marks++) {
      const pattern = spreadPattern(marks, ends);
      for (let width = 1; width <= ends; width++) {
        const counts = Array.from(
          { length: ends },
          (_, from) => Array.from((pattern + pattern).slice(from, from + width)).filter((sign) => sign === "x").length,
        );
        expect(Math.max(...counts) - Math.min(...counts)).toBeLessThanOrEqual(1);
      }
      expect(Array.from(pattern).filter((sign) => sign === "x")).toHaveLength(marks);
    }
  }
});
law(
  30,
  "any two windows of an even spread differ by one at most",
  [upTo(200), upTo(200), upTo(200), upTo(200), upTo(200)],
  (more, some, one, other, size) => {
    const ends = more + 1;
    const pattern = spreadPattern(some % (ends + 1), ends).repeat(3);
    const count = (from: number): number =>
      Array.from(pattern.slice(from % ends, (from % ends) + (size % ends))).filter((sign) => sign === "x").length;
    expect(Math.abs(count(one) - count(other))).toBeLessThanOrEqual(1);
  },
);

test("a blend has as much of one colour as of the other, and is the same turned round and dyed the other way", () => {
  for (let ends = 2; ends <= 60; ends++) {
    const order = everyEnd(gradedBlend({ from: "A", to: "B", ends }));
    const second = order.filter((colour) => colour === "B").length;
    expect(second).toBe(Math.floor((ends + 1) / 2));
    for (const [index] of order.entries()) {
      const counted = order.slice(0, index + 1).filter((colour) => colour === "B").length;
      expect(Math.abs(counted - (index + 1) ** 2 / (2 * ends))).toBeLessThanOrEqual(0.5);
    }
  }
});

test("a blend of eight ends, done by hand", () => {
  // i² ÷ 16 for 1 to 8: 0.06 0.25 0.56 1 1.56 2.25 3.06 4, rounded 0 0 1 1 2 2 3 4.
  expect(everyEnd(gradedBlend({ from: "A", to: "B", ends: 8 })).join("")).toBe("AABABABB");
});

test("Fibonacci stripes take the colours in turn and may be mirrored", () => {
  const made = fibonacciStripes({ colours: ["ash", "coal", "weld"], numbers: [1, 2, 3, 5, 8] });
  expect(made.runs.map(({ colour, ends }) => `${ends} ${colour}`)).toEqual([
    "1 ash",
    "2 coal",
    "3 weld",
    "5 ash",
    "8 coal",
  ]);
  expect(mirror(made).ends).toBe(38);
});

test("a random order keeps within its limits", () => {
  const limits = fc.record({
    seed: upTo(4_294_967_295),
    ends: fc.integer({ min: 1, max: 80 }),
    colours: fc.integer({ min: 2, max: 4 }),
    longestRun: fc.integer({ min: 1, max: 5 }),
    spare: upTo(20),
  });
  fc.assert(
    fc.property(limits, ({ seed, ends, colours, longestRun, spare }) => {
      const share = Math.floor(ends / colours);
      const list = Array.from({ length: colours }, (_, colour) => ({
        colour,
        atLeast: Math.max(0, share - spare),
        atMost: share + 1 + spare,
      }));
      const made = randomOrder({ seed, ends, colours: list, longestRun });
      expect(made.ends).toBe(ends);
      expect(Math.max(...made.runs.map((run) => run.ends))).toBeLessThanOrEqual(longestRun);
      for (const { colour, atLeast, atMost } of list) {
        const counted = totalsOf(made).get(colour) ?? 0;
        expect(counted).toBeGreaterThanOrEqual(atLeast);
        expect(counted).toBeLessThanOrEqual(atMost);
      }
    }),
    { numRuns: 1000 },
  );
});

test("a random order of one colour is that colour, and limits that leave one order give it", () => {
  expect(
    randomOrder({ seed: 1, ends: 5, colours: [{ colour: "ash", atLeast: 0, atMost: 5 }], longestRun: 5 }).runs,
  ).toEqual([{ colour: "ash", ends: 5 }]);
  const tight = randomOrder({
    seed: 9,
    ends: 7,
    colours: [
      { colour: "A", atLeast: 4, atMost: 4 },
      { colour: "B", atLeast: 0, atMost: 7 },
    ],
    longestRun: 1,
  });
  expect(everyEnd(tight).join("")).toBe("ABABABA");
});

const two = [
  { colour: "A", atLeast: 0, atMost: 9 },
  { colour: "B", atLeast: 0, atMost: 9 },
];
test.each<[string, () => unknown, string]>([
  ["too little of every colour", () => randomOrder({ seed: 1, ends: 19, colours: two, longestRun: 3 }), "does-not-fit"],
  [
    "too much of one colour for its runs",
    () =>
      randomOrder({
        seed: 1,
        ends: 10,
        colours: [{ colour: "A", atLeast: 9, atMost: 9 }, ...two.slice(1)],
        longestRun: 3,
      }),
    "does-not-fit",
  ],
  [
    "more than all the ends",
    () =>
      randomOrder({
        seed: 1,
        ends: 10,
        colours: [
          { colour: "A", atLeast: 6, atMost: 6 },
          { colour: "B", atLeast: 6, atMost: 6 },
        ],
        longestRun: 3,
      }),
    "does-not-fit",
  ],
  [
    "a seed that would be cut",
    () => randomOrder({ seed: 2 ** 32, ends: 10, colours: two, longestRun: 3 }),
    "out-of-range",
  ],
  [
    "a seed that is a word",
    () => randomOrder({ seed: "x" as never, ends: 10, colours: two, longestRun: 3 }),
    "wrong-kind",
  ],
  ["no colours", () => randomOrder({ seed: 1, ends: 10, colours: [], longestRun: 3 }), "empty"],
  [
    "a colour named twice",
    () => randomOrder({ seed: 1, ends: 10, colours: [...two, ...two], longestRun: 3 }),
    "does-not-fit",
  ],
  ["a number that is no Fibonacci number", () => fibonacciStripes({ colours: ["A"], numbers: [1, 4] }), "out-of-range"],
  ["no numbers", () => fibonacciStripes({ colours: ["A"], numbers: [] }), "empty"],
  ["more marks than ends", () => evenSpread({ colour: "A", ground: "B", marks: 9, ends: 8 }), "out-of-range"],
  ["a blend of one end", () => gradedBlend({ from: "A", to: "B", ends: 1 }), "out-of-range"],
  ["half an end of blend", () => gradedBlend({ from: "A", to: "B", ends: 8.5 }), "not-whole"],
])("%s is refused", (_, call, code) => {
  expect(refusalOf(call).code).toBe(code);
});

test("orders can be joined like any sequence", () => {
  expect(
    join([gradedBlend({ from: "A", to: "B", ends: 8 }), evenSpread({ colour: "B", ground: "A", marks: 2, ends: 8 })])
      .ends,
  ).toBe(16);
});

test("a random order keeps limits that leave it no room", () => {
  fc.assert(
    fc.property(upTo(2 ** 31), upTo(6), upTo(4), (seed, gaps, more) => {
      // So many of the one that every gap of the other is filled to the longest run.
      const longestRun = more + 1;
      const [many, few] = [(gaps + 1) * longestRun, gaps];
      const colours = [
        { colour: "many", atLeast: many, atMost: many },
        { colour: "few", atLeast: few, atMost: few },
      ];
      const made = randomOrder({ seed, ends: many + few, colours, longestRun });
      expect(made.runs.filter(({ colour }) => colour === "many").map(({ ends }) => ends)).toEqual(
        Array.from({ length: gaps + 1 }, () => longestRun),
      );
    }),
    { numRuns: 1000 },
  );
});
