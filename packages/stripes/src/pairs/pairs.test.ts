import { cited } from "#ci/cited.js";
import { law, upTo } from "#ci/law.js";
import { refusalOf } from "#ci/refusal-of.js";
import { yarnLife2007 } from "#ci/sources.js";
import fc from "fast-check";
import { expect, test } from "vitest";
import { everyEnd } from "../sequence/every-end.js";
import { sequenceFromEnds } from "../sequence/sequence-from-ends.js";
import { blindPairingChance } from "./blind-pairing-chance.js";
import type { Fraction } from "./fraction.js";
import { groupOutlook } from "./group-outlook.js";
import { groupPreview } from "./group-preview.js";
import { oddEndsChance } from "./odd-ends-chance.js";
import { pairOutlook } from "./pair-outlook.js";
import { pairPreview } from "./pair-preview.js";

const even = { times: 1, outOf: 2 };
const text = ({ numerator, denominator }: Fraction): string =>
  denominator === "1" ? numerator : `${numerator}/${denominator}`;
const gcd = (one: number, other: number): number => (other === 0 ? one : gcd(other, one % other));
const over = (numerator: number, denominator: number): string => {
  const shared = gcd(numerator, denominator);
  return denominator === shared ? String(numerator / shared) : `${numerator / shared}/${denominator / shared}`;
};
/** All orders of n pairs. */
const orders = (pairs: number): string[] =>
  pairs === 0 ? [""] : orders(pairs - 1).flatMap((order) => [`${order}LD`, `${order}DL`]);
const runs = (order: string): number[] => sequenceFromEnds(Array.from(order)).runs.map(({ ends }) => ends);
const doubles = (order: string): number => order.length - runs(order).length;

for (const pairs of [1, 2, 3, 4, 5, 8]) {
  const all = orders(pairs);
  const outlook = () => pairOutlook({ pairs, lead: even });
  const mean = (count: (order: string) => number): string =>
    over(
      all.reduce((sum, order) => sum + count(order), 0),
      all.length,
    );

  test(`law 24: ${pairs} pairs listed: as many of each colour, no run over two`, () => {
    for (const order of all) {
      expect(Array.from(order).filter((thread) => thread === "L")).toHaveLength(outlook().ofEach);
      for (let ends = 2; ends <= order.length; ends += 2)
        expect(Array.from(order.slice(0, ends)).filter((thread) => thread === "L")).toHaveLength(ends / 2);
    }
    expect(Math.max(...all.flatMap(runs))).toBe(outlook().longestRun);
    expect(String(all.length)).toBe(outlook().orders);
  });
  test(`law 25: ${pairs} pairs listed: neighbours are alike only where pairs meet, half the time`, () => {
    expect(all.every((order) => order.length === 2 * pairs)).toBe(true);
    for (let boundary = 2; boundary < 2 * pairs; boundary += 2) {
      const alike = all.filter((order) => order[boundary - 1] === order[boundary]);
      expect(over(alike.length, all.length)).toBe(text(outlook().doubleChance));
      expect(alike.filter((order) => order[boundary] === "L")).toHaveLength(alike.length / 2);
    }
  });
  test(`law 26: ${pairs} pairs listed: the number of stripes`, () => {
    expect(text(outlook().meanRuns)).toBe(mean((order) => runs(order).length));
    expect(text(outlook().meanRuns)).toBe(over(3 * pairs + 1, 2));
    expect(text(outlook().meanDoubles)).toBe(mean(doubles));
    expect(text(outlook().varianceOfRuns)).toBe(over(pairs - 1, 4));
    const counts = all.map((order) => runs(order).length);
    for (let some = 0, ways = 2; some < pairs; ways = (ways * (pairs - 1 - some)) / (some + 1), some++)
      expect(all.filter((order) => doubles(order) === some)).toHaveLength(ways);
    expect([Math.min(...counts), Math.max(...counts)]).toEqual([outlook().fewestRuns, outlook().mostRuns]);
    expect(text(outlook().noDoubleChance)).toBe(over(all.filter((order) => doubles(order) === 0).length, all.length));
  });
  test(`law 27: ${pairs} pairs listed: orders alike from both sides`, () => {
    const turned = (order: string): string => Array.from(order).reverse().join("");
    expect(String(all.filter((order) => order === turned(order)).length)).toBe(outlook().palindromes);
    expect(String(new Set(all.map((order) => (order < turned(order) ? order : turned(order)))).size)).toBe(
      outlook().ordersUpToMirror,
    );
  });
  test(`${pairs} pairs listed: the colour on odd ends`, () => {
    for (let count = 0; count <= pairs; count++) {
      const found = all.filter(
        (order) => Array.from(order).filter((thread, index) => index % 2 === 0 && thread === "L").length === count,
      );
      expect(text(oddEndsChance({ pairs, lead: even, count }))).toBe(over(found.length, all.length));
    }
  });
}

test("law 25: pairs that lead unevenly, listed with their weights", () => {
  for (const [times, outOf] of [
    [1, 3],
    [9, 10],
    [0, 1],
    [1, 1],
  ] as const) {
    for (const pairs of [1, 2, 3, 4, 5]) {
      const outlook = () => pairOutlook({ pairs, lead: { times, outOf } });
      const weighted = orders(pairs).map((order) => {
        const leads = Array.from(order).filter((thread, index) => index % 2 === 0 && thread === "L").length;
        return { order, weight: times ** leads * (outOf - times) ** (pairs - leads) };
      });
      const mean = (count: (order: string) => number): number =>
        weighted.reduce((sum, { order, weight }) => sum + weight * count(order), 0);
      const whole = outOf ** pairs;
      expect(text(outlook().meanDoubles)).toBe(over(mean(doubles), whole));
      expect(text(outlook().meanRuns)).toBe(
        over(
          mean((order) => runs(order).length),
          whole,
        ),
      );
      expect(text(outlook().noDoubleChance)).toBe(
        over(
          mean((order) => (doubles(order) === 0 ? 1 : 0)),
          whole,
        ),
      );
      const squares = mean((order) => doubles(order) ** 2);
      expect(text(outlook().varianceOfRuns)).toBe(over(squares * whole - mean(doubles) ** 2, whole * whole));
      expect(text(outlook().meanOnOddEnds)).toBe(over(pairs * times, outOf));
    }
  }
});

test("figures of the brief on pairs, done by hand", () => {
  expect(text(pairOutlook({ pairs: 8, lead: even }).meanDoubles)).toBe("7/2");
  expect(text(pairOutlook({ pairs: 8, lead: even }).meanRuns)).toBe("25/2");
  expect(text(pairOutlook({ pairs: 8, lead: even }).noDoubleChance)).toBe("1/128");
  expect(pairOutlook({ pairs: 10, lead: even })).toMatchObject({
    orders: "1024",
    ordersUpToMirror: "528",
    ends: 20,
    palindromes: "32",
  });
  expect(text(pairOutlook({ pairs: 10, lead: even }).meanRuns)).toBe("31/2");
  expect(text(pairOutlook({ pairs: 2, lead: { times: 1, outOf: 3 } }).doubleChance)).toBe("4/9");
  expect(text(pairOutlook({ pairs: 2, lead: { times: 9, outOf: 10 } }).doubleChance)).toBe("9/50");
  expect(pairOutlook({ pairs: 5, lead: even }).meanRunsWithoutPairs).toBe(6);
});

/** All orders of n groups of k threads. */
const shuffles = (threads: string): string[] =>
  threads === ""
    ? [""]
    : Array.from(threads).flatMap((thread) => shuffles(threads.replace(thread, "")).map((rest) => thread + rest));
test("law 28: groups of several threads, listed", () => {
  for (const [groups, threads] of [
    [3, 3],
    [2, 4],
    [4, 2],
    [4, 3],
  ] as const) {
    const once = shuffles("ABCD".slice(0, threads));
    let all = [""];
    for (let group = 0; group < groups; group++) all = all.flatMap((order) => once.map((next) => order + next));
    const outlook = () => groupOutlook({ groups, threads });
    expect(text(outlook().meanRuns)).toBe(
      over(
        all.reduce((sum, order) => sum + runs(order).length, 0),
        all.length,
      ),
    );
    expect(Math.max(...all.flatMap(runs))).toBe(outlook().longestRun);
    expect(outlook().ends).toBe(groups * threads);
  }
  expect(text(groupOutlook({ groups: 3, threads: 3 }).meanRuns)).toBe("25/3");
  expect(text(groupOutlook({ groups: 4, threads: 3 }).meanRuns)).toBe("11");
  expect(text(groupOutlook({ groups: 2, threads: 4 }).meanRuns)).toBe("31/4");
  expect(text(groupOutlook({ groups: 2, threads: 4 }).doubleChance)).toBe("1/4");
});

law(
  24,
  "a preview is an order that pairs can fall into",
  [upTo(4_294_967_295), upTo(60), upTo(4)],
  (seed, more, times) => {
    const order = everyEnd(
      pairPreview({ seed, pairs: more + 1, lead: { times, outOf: 4 }, first: "L", second: "D" }),
    ).join("");
    for (let ends = 2; ends <= order.length; ends += 2) expect(["LD", "DL"]).toContain(order.slice(ends - 2, ends));
    expect(order).toHaveLength(2 * (more + 1));
    expect(Math.max(...runs(order))).toBeLessThanOrEqual(2);
  },
);
test("previews of many seeds have the doubles that are to be expected", () => {
  let found = 0;
  for (let seed = 0; seed < 2000; seed++)
    found += 16 - pairPreview({ seed, pairs: 8, lead: even, first: "L", second: "D" }).runs.length;
  // 3.5 a warp, standard deviation 1.32 a warp: five of them over 2,000 warps is 0.15.
  expect(Math.abs(found / 2000 - 3.5)).toBeLessThan(0.15);
});
test("the chances of the colour on odd ends sum to one", () => {
  fc.assert(
    fc.property(upTo(40), upTo(7), (more, times) => {
      const chances = Array.from({ length: more + 2 }, (_, count) =>
        oddEndsChance({ pairs: more + 1, lead: { times, outOf: 7 }, count }),
      );
      const whole = 7n ** BigInt(more + 1);
      const parts = chances.map(({ numerator, denominator }) => BigInt(numerator) * (whole / BigInt(denominator)));
      expect(parts.reduce((sum, part) => sum + part, 0n)).toBe(whole);
      expect(text(oddEndsChance({ pairs: more + 1, lead: { times, outOf: 7 }, count: more + 2 }))).toBe("0");
    }),
    { numRuns: 1000 },
  );
});

/** One chance in how many. */
function oneIn(input: { pairs: number }): number {
  return Number(blindPairingChance(input).denominator);
}
cited(
  "two pairs sleyed into one slot and paired blind: right one time in how many",
  {
    source: yarnLife2007,
    at: "opening",
    status: "read",
    prints: "4",
    exact: "3",
    differs: "four threads pair in three ways, so every third group is right, not every fourth",
  },
  oneIn,
  [{ pairs: 2 }],
);
test("three pairs paired blind are right one time in fifteen", () => {
  expect(text(blindPairingChance({ pairs: 3 }))).toBe("1/15");
  expect(text(blindPairingChance({ pairs: 1 }))).toBe("1");
});

test.each<[string, () => unknown, string]>([
  ["no pairs", () => pairOutlook({ pairs: 0, lead: even }), "out-of-range"],
  ["half a pair", () => pairOutlook({ pairs: 2.5, lead: even }), "not-whole"],
  ["a lead of three times out of two", () => pairOutlook({ pairs: 2, lead: { times: 3, outOf: 2 } }), "out-of-range"],
  ["a lead out of none", () => pairOutlook({ pairs: 2, lead: { times: 0, outOf: 0 } }), "out-of-range"],
  ["a lead that is a fraction", () => pairOutlook({ pairs: 2, lead: 0.5 as never }), "wrong-kind"],
  ["no lead stated", () => pairOutlook({ pairs: 2 } as never), "missing"],
  ["fewer than no odd ends", () => oddEndsChance({ pairs: 2, lead: even, count: -1 }), "out-of-range"],
  ["a group of one thread", () => groupOutlook({ groups: 2, threads: 1 }), "out-of-range"],
  ["pairing no pairs", () => blindPairingChance({ pairs: 0 }), "out-of-range"],
  [
    "a preview without a seed",
    () => pairPreview({ pairs: 2, lead: even, first: "a", second: "b" } as never),
    "missing",
  ],
])("%s is refused", (_, call, code) => {
  expect(refusalOf(call).code).toBe(code);
});
test("one pair or one group alone meets no other: no double, and nothing left to vary", () => {
  const alone = pairOutlook({ pairs: 1, lead: { times: 1, outOf: 3 } });
  expect(text(alone.varianceOfRuns)).toBe("0");
  expect(text(alone.noDoubleChance)).toBe("1");
  expect(alone.longestRun).toBe(1);
  expect(groupOutlook({ groups: 1, threads: 3 }).longestRun).toBe(1);
});
test("a lead of more than all pairs is refused where it stands", () => {
  expect(refusalOf(() => pairOutlook({ pairs: 4, lead: { times: 3, outOf: 2 } })).path).toEqual(["lead", "times"]);
});

/** Every order once, however often its letters come. */
const distinct = (threads: string): string[] => [...new Set(shuffles(threads))];
test("groups of a hand that holds a colour more than once, listed for five hands", () => {
  for (const [hand, each, groups] of [
    ["AAB", [2, 1], 3],
    ["AB", [1, 1], 4],
    ["AABB", [2, 2], 2],
    ["AAAB", [3, 1], 3],
    ["AABC", [2, 1, 1], 2],
    ["AA", [2], 3],
  ] as const) {
    const once = distinct(hand);
    let all = [""];
    for (let group = 0; group < groups; group++) all = all.flatMap((order) => once.map((next) => order + next));
    const outlook = groupOutlook({ groups, threads: each });
    expect(outlook.orders).toBe(String(all.length));
    expect(text(outlook.meanRuns)).toBe(
      over(
        all.reduce((sum, order) => sum + runs(order).length, 0),
        all.length,
      ),
    );
    expect(Math.max(...all.flatMap(runs))).toBe(outlook.longestRun);
  }
  // Plum, plum, pink: 27 orders, 53/9 stripes of one colour, plum at most four together.
  const plum = groupOutlook({ groups: 3, threads: [2, 1] });
  expect([plum.orders, text(plum.meanRuns), plum.longestRun, text(plum.doubleChance)]).toEqual([
    "27",
    "53/9",
    4,
    "5/9",
  ]);
  const pair = groupOutlook({ groups: 24, threads: 2 });
  expect([pair.orders, text(pair.meanRuns), pair.longestRun]).toEqual([String(2 ** 24), "73/2", 2]);
  expect(refusalOf(() => groupOutlook({ groups: 2, threads: [1] })).code).toBe("out-of-range");
  expect(refusalOf(() => groupOutlook({ groups: 2, threads: [] })).code).toBe("empty");
});
law(
  28,
  "a preview of groups is an order that their hands can fall into",
  [upTo(4_294_967_295), upTo(30)],
  (seed, more) => {
    const hand = ["A", "A", "B", "C"];
    const order = everyEnd(groupPreview({ seed, groups: more + 1, hand }));
    expect(order).toHaveLength(4 * (more + 1));
    for (let end = 0; end < order.length; end += 4)
      expect([...order.slice(end, end + 4)].sort((a, b) => (a < b ? -1 : 1))).toEqual(hand);
  },
);
test("previews of groups come in all orders, about as often", () => {
  const seen = new Map<string, number>();
  for (let seed = 0; seed < 600; seed++) {
    const order = everyEnd(groupPreview({ seed, groups: 1, hand: ["A", "B", "C"] })).join("");
    seen.set(order, (seen.get(order) ?? 0) + 1);
  }
  expect(seen.size).toBe(6);
  for (const times of seen.values()) expect(times).toBeGreaterThan(60);
  expect(refusalOf(() => groupPreview({ seed: 1, groups: 2, hand: [] })).code).toBe("empty");
});
