import { cited } from "#ci/cited.js";
import { law, stripes, upTo } from "#ci/law.js";
import { refusalOf } from "#ci/refusal-of.js";
import {
  birgen,
  dustBunniesJanuary2013,
  eduCom,
  electowiki,
  gauthmath,
  solvely,
  yarnsFromTheLake2023,
} from "#ci/sources.js";
import fc from "fast-check";
import { expect, test } from "vitest";
import { mirror } from "../sequence/mirror.js";
import { pivot } from "../sequence/pivot.js";
import { repeat } from "../sequence/repeat.js";
import { reverse } from "../sequence/reverse.js";
import { sequence } from "../sequence/sequence.js";
import { apportionment } from "./apportionment.js";
import { balanced } from "./balanced.js";
import { fittedSides } from "./fitted-sides.js";
import { leastMoves } from "./least-moves.js";
import { scale } from "./scale.js";
import { sequenceFromShares } from "./sequence-from-shares.js";
import { snap } from "./snap.js";

const census = [
  630560, 475327, 432879, 353523, 331589, 278514, 236841, 206236, 179570, 141822, 85533, 70835, 68705, 68446, 55540,
];
const at = "section Apportionment";
const published: readonly [string, typeof birgen, string, readonly number[], number, string, string][] = [
  [
    "60 seats among 15 states of 1790",
    electowiki,
    "example of 1790",
    census,
    60,
    "11 8 7 6 6 5 4 3 3 2 1 1 1 1 1",
    "11,8,7,6,6,5,4,3,3,2,1,1,1,1,1",
  ],
  [
    "119 among five regions counted in millions",
    birgen,
    at,
    [810, 594, 473, 292, 211],
    119,
    "40 30 24 15 10",
    "40,30,24,15,10",
  ],
  ["250 among five schools", birgen, at, [3292, 1524, 4162, 2132, 13890], 250, "33 15 42 21 139", "33,15,42,21,139"],
  ["200 among three", birgen, at, [940, 9030, 10030], 200, "10 90 100", "10,90,100"],
  [
    "201 among three: one more in all than 200 is one fewer for the first",
    birgen,
    at,
    [940, 9030, 10030],
    201,
    "9 91 101",
    "9,91,101",
  ],
  ["50 among five", birgen, at, [150, 78, 173, 204, 295], 50, "8 4 10 11 17", "8,4,10,11,17"],
  ["50 among the five when two have grown", birgen, at, [150, 78, 181, 204, 296], 50, "8 5 10 11 16", "8,5,10,11,16"],
  ["100 among two", birgen, at, [89550, 10450], 100, "90 10", "90,10"],
  ["105 among three, the last one new", birgen, at, [89550, 10450, 5250], 105, "89 11 5", "89,11,5"],
  ["11 among three, one of whom gets nothing", birgen, at, [54, 243, 703], 11, "0 3 8", "0,3,8"],
  ["10 among three, one of whom had nothing of 11", birgen, at, [54, 243, 703], 10, "1 2 7", "1,2,7"],
  ["11 among three of shares 56, 255 and 789", birgen, at, [56, 255, 789], 11, "1 2 8", "1,2,8"],
  ["17 among four", birgen, at, [54, 243, 703, 580], 17, "1 3 7 6", "1,3,7,6"],
  ["100 among four states", gauthmath, "solution", [992, 1369, 2003, 3636], 100, "12 17 25 46", "12,17,25,46"],
  [
    "42 among five counties",
    solvely,
    "solution",
    [247000, 185000, 459000, 400000, 413000],
    42,
    "6 5 11 10 10",
    "6,5,11,10,10",
  ],
  [
    "116 among four states",
    eduCom,
    "solution, of which the quotas were read",
    [33700, 559500, 141300, 89100],
    116,
    "",
    "5,79,20,12",
  ],
];
for (const [title, source, place, shares, total, prints, exact] of published) {
  cited(
    title,
    { source, at: place, status: "read", prints, exact },
    apportionment,
    [{ shares, total, smallest: 0 }],
    "parts",
  );
}

const shareLists = fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 1, maxLength: 12 });
const sum = (list: readonly number[]): number => list.reduce((all, one) => all + one, 0);

law(
  20,
  "largest remainders sum to the total, round every quota down or up, and never give a wider stripe less",
  [shareLists, upTo(300), upTo(9)],
  (shares, more, times) => {
    const total = more + 1;
    const { parts } = apportionment({ shares, total, smallest: 0 });
    expect(sum(parts)).toBe(total);
    for (const [index, part] of parts.entries()) {
      const quota = (BigInt(shares[index] ?? 0) * BigInt(total)) / BigInt(sum(shares));
      expect([Number(quota), Number(quota) + 1]).toContain(part);
      for (const [other, width] of shares.entries())
        if (width > (shares[index] ?? 0)) expect(parts[other]).toBeGreaterThanOrEqual(part);
    }
    expect(apportionment({ shares, total: sum(shares) * (times + 1), smallest: 0 }).parts).toEqual(
      shares.map((share) => share * (times + 1)),
    );
    expect(apportionment({ shares: shares.map((share) => share * 7), total, smallest: 0 }).parts).toEqual(parts);
  },
);
law(
  20,
  "a smallest part is kept, and the parts still sum to the total",
  [shareLists, upTo(200), upTo(5)],
  (shares, more, smallest) => {
    const total = smallest * shares.length + more + 1;
    const { parts } = apportionment({ shares, total, smallest });
    expect(sum(parts)).toBe(total);
    expect(Math.min(...parts)).toBeGreaterThanOrEqual(smallest);
  },
);
law(
  20,
  "shares that mirror give parts that mirror, but where an odd end has no middle stripe to go to",
  [shareLists, upTo(300)],
  (half, more) => {
    const shares = [...half, ...[...half].reverse().slice(1)];
    const { parts, tied } = apportionment({ shares, total: more + 1, smallest: 0 });
    const middle = half.length;
    if (parts.join() !== [...parts].reverse().join()) {
      expect(tied).not.toContain(middle);
      expect(tied.length).toBeGreaterThan(0);
    }
  },
);

test("equal stripes share out a tie in pairs from the outside, the middle one taking the odd end", () => {
  const shares = [1, 1, 1, 1, 1];
  const parts = (total: number): readonly number[] => apportionment({ shares, total, smallest: 0 }).parts;
  expect(parts(11)).toEqual([2, 2, 3, 2, 2]);
  expect(parts(12)).toEqual([3, 2, 2, 2, 3]);
  expect(parts(13)).toEqual([3, 2, 3, 2, 3]);
  expect(parts(14)).toEqual([3, 3, 2, 3, 3]);
  expect(apportionment({ shares, total: 12, smallest: 0 }).tied).toEqual([1, 2, 3, 4, 5]);
  expect(apportionment({ shares: [2, 3], total: 5, smallest: 0 }).tied).toEqual([]);
});

test("a remainder larger than all others is no tie", () => {
  // 7 × 5, 3 and 2 tenths: 3.5, 2.1 and 1.4.
  expect(apportionment({ shares: [5, 3, 2], total: 7, smallest: 0 })).toEqual({
    parts: [4, 2, 1],
    tied: [],
    sharesInAll: 10,
  });
  const stripes = [
    { colour: "ash", share: 50 },
    { colour: "coal", share: 40 },
  ];
  expect(sequenceFromShares({ stripes, ends: 18, step: 1, smallest: 1 })).toMatchObject({ sharesInAll: 90, tied: [] });
});

test("places in order lie as near to their targets as any in that order", () => {
  const orders = (length: number, from: number): number[][] =>
    length === 0
      ? [[]]
      : Array.from({ length: 7 - from }, (_, more) => from + more).flatMap((first) =>
          orders(length - 1, first).map((rest) => [first, ...rest]),
        );
  const away = (targets: readonly number[], places: readonly number[]): number =>
    targets.reduce((sum, target, index) => sum + Math.abs(target - (places[index] ?? Number.NaN)), 0);
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0, max: 24 }), { minLength: 1, maxLength: 5 }), (quarters) => {
      const targets = quarters.map((quarter) => quarter / 4);
      const placed = leastMoves(targets, 6);
      expect(placed).toEqual([...placed].sort((one, other) => one - other));
      expect(away(targets, placed)).toBe(Math.min(...orders(targets.length, 0).map((places) => away(targets, places))));
    }),
    { numRuns: 1000 },
  );
});

test("an even number of equal stripes shares out from the two sides", () => {
  expect(apportionment({ shares: [1, 1, 1, 1], total: 6, smallest: 0 }).parts).toEqual([2, 1, 1, 2]);
});

test("a narrow stripe is given its smallest part before the rest is shared out", () => {
  expect(apportionment({ shares: [54, 243, 703], total: 11, smallest: 2 }).parts).toEqual([2, 2, 7]);
});

test("widths in eighths of an inch become ends in whole pairs", () => {
  const { sequence: made, vanished } = sequenceFromShares({
    stripes: [
      { colour: "ash", share: 8 },
      { colour: "coal", share: 1 },
      { colour: "weld", share: 7 },
    ],
    ends: 64,
    step: 2,
    smallest: 2,
  });
  expect(made.runs.map(({ ends }) => ends)).toEqual([32, 4, 28]);
  expect(vanished).toEqual([]);
});

test("a stripe too narrow for a single end is named", () => {
  const { sequence: made, vanished } = sequenceFromShares({
    stripes: [
      { colour: "ash", share: 99 },
      { colour: "coal", share: 1 },
      { colour: "ash", share: 99 },
    ],
    ends: 20,
    step: 1,
    smallest: 0,
  });
  expect(made.runs).toEqual([{ colour: "ash", ends: 20 }]);
  expect(vanished).toEqual([2]);
});

const widths = (list: readonly number[]) =>
  sequence(list.map((ends, index) => ({ colour: index % 2 === 0 ? "ash" : "coal", ends })));
const runs = (made: { readonly runs: readonly { readonly ends: number }[] }): number[] =>
  made.runs.map(({ ends }) => ends);

test("a gingham of 58 ends scaled to 64 in pairs, done by hand", () => {
  const gingham = widths([20, 2, 6, 2, 6, 6, 6, 2, 6, 2]);
  expect(runs(scale({ sequence: gingham, ends: 64, step: 2, smallest: 0 }).sequence)).toEqual([
    22, 2, 8, 2, 8, 6, 6, 2, 6, 2,
  ]);
});

/** The least change, by trying every place of every edge. */
function leastByTrying(made: readonly number[], step: number, least: number, mirrored: boolean): number {
  const total = sum(made);
  const edges = made.map((_, index) => sum(made.slice(0, index + 1)));
  const choose = (index: number, last: number, chosen: number[]): number => {
    if (index === made.length - 1) {
      if (total - last < least) return Infinity;
      const all = [...chosen, total].map((edge, place) => edge - (chosen[place - 1] ?? 0));
      if (mirrored && all.join() !== [...all].reverse().join()) return Infinity;
      return sum(chosen.map((edge, place) => Math.abs(edge - (edges[place] ?? 0))));
    }
    let best = Infinity;
    for (let edge = step; edge < total; edge += step)
      if (edge - last >= least) best = Math.min(best, choose(index + 1, edge, [...chosen, edge]));
    return best;
  };
  return choose(0, 0, []);
}

law(
  21,
  "a scaled sequence has the ends asked for, each stripe within one step of its share, and to its own ends it is itself",
  [stripes, upTo(300), fc.constantFrom(1, 2, 3, 4)],
  (list, more, step) => {
    const made = sequence(list);
    const ends = (more + 1) * step;
    const { parts } = apportionment({ shares: made.runs.map((run) => run.ends), total: more + 1, smallest: 0 });
    const scaled = scale({ sequence: made, ends, step, smallest: 0 });
    expect(scaled.sequence.ends).toBe(ends);
    expect(scaled.sequence.written.map((stripe) => stripe.ends / step)).toEqual(parts.filter((part) => part > 0));
    for (const [index, run] of made.runs.entries())
      expect(Math.abs((parts[index] ?? 0) * step - (run.ends * ends) / made.ends)).toBeLessThan(step);
    expect(scaled.vanished).toEqual(parts.flatMap((part, index) => (part === 0 ? [index + 1] : [])));
    expect(scale({ sequence: made, ends: made.ends, step: 1, smallest: 0 }).sequence.runs).toEqual(made.runs);
  },
);
law(
  21,
  "snapped edges keep the total, fall on whole steps, and move no more than they must",
  [fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 5 }), fc.constantFrom(2, 3, 4), upTo(8)],
  (list, step, smallest) => {
    const short = (step - (sum(list) % step)) % step;
    const made = [...list.slice(0, -1), (list.at(-1) ?? 0) + short];
    const least = Math.max(1, Math.ceil(smallest / step)) * step;
    fc.pre(least * made.length <= sum(made));
    const before = widths(made);
    const after = snap({ sequence: before, step, smallest });
    expect(after.sequence.ends).toBe(before.ends);
    for (const ends of runs(after.sequence)) {
      expect(ends % step).toBe(0);
      expect(ends).toBeGreaterThanOrEqual(smallest);
    }
    const mirrored = made.length % 2 === 1 && made.join() === [...made].reverse().join();
    expect(after.change).toBe(leastByTrying(made, step, least, mirrored));
    expect(after.change).toBe(sum(after.moved.map(({ from, to }) => Math.abs(to - from))));
    expect(snap({ sequence: after.sequence, step, smallest }).moved).toEqual([]);
  },
);
law(
  21,
  "a mirrored sequence is still mirrored when its edges are snapped",
  [stripes, fc.constantFrom(2, 3, 4)],
  (list, step) => {
    const half = sequence(list.map(({ colour, ends }) => ({ colour, ends: ends + step })));
    const whole = pivot(half);
    const made = whole.ends % step === 0 ? whole : mirror(repeat({ sequence: half, times: step }));
    fc.pre(made.ends % step === 0 && made.runs.length * step <= made.ends);
    const after = snap({ sequence: made, step, smallest: 1 }).sequence;
    expect(after.runs).toEqual(reverse(after).runs);
  },
);

test("what moved is told edge by edge", () => {
  expect(snap({ sequence: widths([13, 3, 8]), step: 4, smallest: 4 })).toMatchObject({
    moved: [{ stripe: 1, from: 13, to: 12 }],
    change: 1,
  });
});

test("a repeat is closed by its first stripe, or by nothing if it begins within one", () => {
  const gingham = sequence([
    { colour: "pink", ends: 20 },
    { colour: "black", ends: 2 },
    { colour: "white", ends: 6 },
    { colour: "black", ends: 2 },
  ]);
  const closed = balanced({ repeat: gingham, times: 12 });
  expect(closed.closing.runs).toEqual([{ colour: "pink", ends: 20 }]);
  expect(closed.sequence.ends).toBe(12 * 30 + 20);
  expect(closed.sequence.runs).toEqual(reverse(closed.sequence).runs);
  const begun = sequence([
    { colour: "pink", ends: 10 },
    { colour: "black", ends: 2 },
    { colour: "pink", ends: 10 },
  ]);
  expect(balanced({ repeat: begun, times: 3 }).closing.ends).toBe(0);
});
test("a balanced repeat always reads the same from both sides", () => {
  fc.assert(
    fc.property(stripes, stripes, upTo(4), (one, other, times) => {
      fc.pre(one[0]?.colour !== other[0]?.colour);
      const made = sequence([...pivot(sequence(one)).runs, ...pivot(sequence(other)).runs]);
      const { sequence: warp } = balanced({ repeat: made, times: times + 1 });
      expect(warp.runs).toEqual(reverse(warp).runs);
    }),
    { numRuns: 1000 },
  );
});

cited(
  "206 ends tied to 182: twelve more at each side",
  { source: yarnsFromTheLake2023, at: "20 June 2023", status: "read", prints: "12", exact: "12" },
  fittedSides,
  [{ sequence: widths([90, 92]), ends: 206, step: 1, oddStep: "left" }],
  "left",
);
cited(
  "368 ends cut to 300: as many dropped at each side",
  {
    source: dustBunniesJanuary2013,
    at: "January 2013",
    status: "read",
    prints: "34",
    exact: "-34",
    differs: "ends dropped are counted below nought",
  },
  fittedSides,
  [{ sequence: widths([180, 188]), ends: 300, step: 1, oddStep: "left" }],
  "right",
);

test("ends are added to the outermost stripes and dropped from them, an odd step at the side named", () => {
  const made = widths([10, 4, 10]);
  const more = fittedSides({ sequence: made, ends: 30, step: 2, oddStep: "right" });
  expect(runs(more.sequence)).toEqual([12, 4, 14]);
  expect([more.left, more.right]).toEqual([2, 4]);
  const fewer = fittedSides({ sequence: made, ends: 8, step: 1, oddStep: "left" });
  expect(runs(fewer.sequence)).toEqual([2, 4, 2]);
  const odd = fittedSides({ sequence: made, ends: 21, step: 1, oddStep: "left" });
  expect([odd.left, odd.right]).toEqual([-2, -1]);
  expect(fittedSides({ sequence: made, ends: 24, step: 4, oddStep: "left" }).sequence.runs).toEqual(made.runs);
});

const plain = widths([10, 5, 10]);
test.each<[string, () => unknown, string]>([
  [
    "fewer ends than stripes of the smallest width",
    () => apportionment({ shares: [1, 1, 1], total: 5, smallest: 2 }),
    "does-not-fit",
  ],
  ["no shares", () => apportionment({ shares: [], total: 5, smallest: 0 }), "empty"],
  ["a share of nothing", () => apportionment({ shares: [0, 1], total: 5, smallest: 0 }), "out-of-range"],
  ["a share with a fraction", () => apportionment({ shares: [1.5], total: 5, smallest: 0 }), "not-whole"],
  ["no smallest part stated", () => apportionment({ shares: [1], total: 5 } as never), "missing"],
  [
    "a total that is no whole number of pairs",
    () => scale({ sequence: plain, ends: 51, step: 2, smallest: 0 }),
    "does-not-fit",
  ],
  [
    "ends fewer than one step",
    () => sequenceFromShares({ stripes: [{ colour: "a", share: 1 }], ends: 1, step: 2, smallest: 0 }),
    "does-not-fit",
  ],
  [
    "snapping a total that is no whole number of steps",
    () => snap({ sequence: plain, step: 4, smallest: 1 }),
    "does-not-fit",
  ],
  [
    "snapping to a step wider than the stripes allow",
    () => snap({ sequence: widths([4, 4]), step: 8, smallest: 1 }),
    "does-not-fit",
  ],
  [
    "balancing a repeat that does not reverse",
    () =>
      balanced({ repeat: sequence(["a", "b", "c"].map((colour, index) => ({ colour, ends: index + 1 }))), times: 2 }),
    "not-symmetrical",
  ],
  [
    "a difference of part steps",
    () => fittedSides({ sequence: plain, ends: 30, step: 4, oddStep: "left" }),
    "does-not-fit",
  ],
  ["no side for the odd step", () => fittedSides({ sequence: plain, ends: 30, step: 1 } as never), "missing"],
])("%s is refused", (_, call, code) => {
  expect(refusalOf(call).code).toBe(code);
});
test("stripes that could as well have had the other's ends are told by their numbers, counted from 1", () => {
  // 10 + 4 + 10 + 4 = 28 ends into 13 steps of 2: quotas 4.64, 1.86, 4.64, 1.86; whole steps 4 + 1 + 4 + 1 = 10, and of
  // the three left two go to the .86 of stripes 2 and 4, one to either .64 of stripes 1 and 3.
  const order = [10, 4, 10, 4].map((ends, at) => ({ colour: "abac"[at], ends }));
  const wanted = { ends: 26, step: 2, smallest: 2 };
  expect(scale({ sequence: sequence(order), ...wanted }).tied).toEqual([1, 3]);
  const stripes = order.map(({ colour, ends }) => ({ colour, share: ends }));
  expect(sequenceFromShares({ stripes, ...wanted }).tied).toEqual([1, 3]);
});
