import { cited } from "#ci/cited.js";
import { law, stripes, upTo } from "#ci/law.js";
import { refusalOf } from "#ci/refusal-of.js";
import { allFiberArts1999, weaveAway2012, weaveAway2013 } from "#ci/sources.js";
import fc from "fast-check";
import { expect, test } from "vitest";
import { edges } from "../sequence/edges.js";
import { join } from "../sequence/join.js";
import { repeat } from "../sequence/repeat.js";
import { sequence } from "../sequence/sequence.js";
import { chains } from "./chains.js";
import { layingList } from "./laying-list.js";
import { windingList } from "./winding-list.js";

const warps = stripes.map(sequence);
const plain = (ends: number) => sequence([{ colour: "ash", ends }]);

law(
  22,
  "chains joined give the warp, hold from 1 end to the most, and are as few as can be",
  [warps, upTo(60)],
  (a, few) => {
    const most = few + 1;
    const made = chains({ sequence: a, most, cutAt: 1 });
    expect(join(made.map((chain) => chain.sequence)).runs).toEqual(a.runs);
    const sizes = made.map((chain) => chain.sequence.ends);
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(1);
    expect(Math.max(...sizes)).toBeLessThanOrEqual(most);
    expect(made.length).toBe(Math.ceil(a.ends / most));
    expect(Math.max(...sizes) - Math.min(...sizes)).toBeLessThanOrEqual(1);
    expect(made.map(({ number }) => number)).toEqual(made.map((_, index) => index + 1));
    for (const { firstEnd, lastEnd, sequence: part } of made) expect(lastEnd - firstEnd + 1).toBe(part.ends);
  },
);

/** Fewest chains, and the least sum of squares among those, by trying every set of cuts. */
function best(places: readonly number[], most: number): [number, number] {
  const from = (index: number, begun: number): [number, number] => {
    if (begun === places.at(-1)) return [0, 0];
    let found: [number, number] = [Infinity, Infinity];
    for (let place = index; place < places.length; place++) {
      const length = (places[place] ?? 0) - begun;
      if (length > most) break;
      const [count, squares] = from(place + 1, places[place] ?? 0);
      const here: [number, number] = [count + 1, squares + length * length];
      if (here[0] < found[0] || (here[0] === found[0] && here[1] < found[1])) found = here;
    }
    return found;
  };
  return from(0, 0);
}
test("chains cut at stripe edges are the fewest, and the nearest to equal", () => {
  fc.assert(
    fc.property(warps, upTo(40), (a, more) => {
      const most = Math.max(...a.runs.map(({ ends }) => ends)) + more;
      const made = chains({ sequence: a, most, cutAt: "stripe edges" });
      const squares = made.reduce((sum, { sequence: { ends } }) => sum + ends * ends, 0);
      expect([made.length, squares]).toEqual(best(edges(a), most));
      for (const { lastEnd } of made) expect(edges(a)).toContain(lastEnd);
      expect(join(made.map((chain) => chain.sequence)).runs).toEqual(a.runs);
    }),
    { numRuns: 1000 },
  );
});
test("chains cut between pairs hold whole pairs, all but an odd last end", () => {
  fc.assert(
    fc.property(warps, upTo(30), (a, few) => {
      const made = chains({ sequence: a, most: few + 2, cutAt: 2 });
      for (const { lastEnd } of made.slice(0, -1)) expect(lastEnd % 2).toBe(0);
      expect(Math.max(...made.map(({ sequence: { ends } }) => ends))).toBeLessThanOrEqual(few + 2);
    }),
    { numRuns: 1000 },
  );
});
test("many stripes are cut into chains in a moment", () => {
  const long = repeat({
    sequence: sequence([
      { colour: "a", ends: 7 },
      { colour: "b", ends: 5 },
      { colour: "c", ends: 3 },
    ]),
    times: 5000,
  });
  // No chain can be longer than 97 ends from an ash stripe, then 98 from a coal one: 75,000 ÷ 195 × 2, rounded up.
  expect(chains({ sequence: long, most: 100, cutAt: "stripe edges" }).length).toBe(770);
});

cited(
  "390 ends in chains of 100",
  { source: allFiberArts1999, at: "opening", status: "read", prints: "", exact: "4" },
  chains,
  [{ sequence: plain(390), most: 100, cutAt: 1 }],
  "length",
);
cited(
  "390 ends in chains of 50",
  { source: allFiberArts1999, at: "opening", status: "read", prints: "", exact: "8" },
  chains,
  [{ sequence: plain(390), most: 50, cutAt: 1 }],
  "length",
);
cited(
  "84 threads of one colour on a warping board",
  { source: weaveAway2013, at: "2 January 2013", status: "read", prints: "42", exact: "42" },
  windingList,
  [{ sequence: plain(84), threads: 1, tieEvery: 100 }],
  "0.rounds",
);
cited(
  "34 ends of aqua in rounds",
  { source: weaveAway2012, at: "warping", status: "read", prints: "17", exact: "17" },
  windingList,
  [{ sequence: plain(34), threads: 1, tieEvery: 100 }],
  "0.rounds",
);
cited(
  "24 ends of black in rounds",
  { source: weaveAway2012, at: "warping", status: "read", prints: "12", exact: "12" },
  windingList,
  [{ sequence: plain(24), threads: 1, tieEvery: 100 }],
  "0.rounds",
);

test("five threads together do not come out even on 1,072 ends: 215 passes, three threads laid aside for the last", () => {
  expect(windingList({ sequence: plain(1072), threads: 5, tieEvery: 2000 })).toEqual([
    {
      stripe: 1,
      colour: "ash",
      ends: 1072,
      passes: 215,
      rounds: 107,
      endsAt: "far peg",
      dropForLastPass: 3,
      runningTotal: 1072,
      ties: [],
      todo: ["lay 3 of 5 threads aside for the last pass", "end at the far peg"],
    },
  ]);
});
test("pairs: an odd stripe drops a thread, a half round changes colour at the far peg, the next stripe comes back", () => {
  const warp = sequence([
    { colour: "ash", ends: 6 },
    { colour: "coal", ends: 3 },
    { colour: "ash", ends: 4 },
    { colour: "weld", ends: 2 },
  ]);
  const list = windingList({ sequence: warp, threads: 2, tieEvery: 5 });
  expect(
    list.map(({ passes, rounds, endsAt, dropForLastPass, runningTotal }) => [
      passes,
      rounds,
      endsAt,
      dropForLastPass,
      runningTotal,
    ]),
  ).toEqual([
    [3, 1, "far peg", 0, 6],
    [2, 1, "far peg", 1, 9],
    [2, 1, "far peg", 0, 13],
    [1, 0, "near peg", 0, 15],
  ]);
  expect(list.map(({ todo }) => todo)).toEqual([
    ["change colour at the far peg"],
    ["lay 1 of 2 threads aside for the last pass", "change colour at the far peg"],
    ["change colour at the far peg"],
    [],
  ]);
  expect(list.map(({ ties }) => ties)).toEqual([
    [{ total: 5, endOfStripe: 5, pass: 3 }],
    [],
    [{ total: 10, endOfStripe: 1, pass: 1 }],
    [{ total: 15, endOfStripe: 2, pass: 1 }],
  ]);
});
test("passes and threads laid aside always give the ends", () => {
  fc.assert(
    fc.property(warps, upTo(7), upTo(20), (a, more, every) => {
      const threads = Math.min(more + 1, a.ends);
      const list = windingList({ sequence: a, threads, tieEvery: every + 1 });
      for (const row of list) expect(row.passes * threads - row.dropForLastPass).toBe(row.ends);
      expect(list.at(-1)?.runningTotal).toBe(a.ends);
      expect(list.flatMap(({ ties }) => ties.map(({ total }) => total))).toEqual(
        Array.from({ length: Math.floor(a.ends / (every + 1)) }, (_, tie) => (tie + 1) * (every + 1)),
      );
      expect(list.at(-1)?.endsAt).toBe(
        list.reduce((sum, { passes }) => sum + passes, 0) % 2 === 0 ? "near peg" : "far peg",
      );
    }),
    { numRuns: 1000 },
  );
});

const warp = sequence([
  { colour: "ash", ends: 6 },
  { colour: "coal", ends: 3 },
  { colour: "weld", ends: 9 },
]);
const wound = chains({ sequence: warp, most: 9, cutAt: "stripe edges" });
test("the chains as laid: from the front end 1 is on its own side, from behind on the other", () => {
  const laid = (endOneOn: "left" | "right", behind: boolean) =>
    layingList({
      chains: wound,
      endOneOn,
      knotsTied: behind ? "behind the heddles" : "in front of the reed",
      weaverFaces: behind ? "front of the loom" : "back of the loom",
    }).map(
      ({ place, number, sequence: { runs }, firstEndOn }) =>
        `${place}: chain ${number}, ${runs.map(({ colour }) => colour).join(" ")}, ${firstEndOn}`,
    );
  const asWound = ["1: chain 1, ash coal, left", "2: chain 2, weld, left"];
  const turned = ["1: chain 2, weld, right", "2: chain 1, coal ash, right"];
  expect(laid("left", false)).toEqual(asWound);
  expect(laid("right", true)).toEqual(asWound);
  expect(laid("right", false)).toEqual(turned);
  expect(laid("left", true)).toEqual(turned);
});
test("behind the reed the weaver may face either way", () => {
  for (const weaverFaces of ["back of the loom", "front of the loom"] as const) {
    expect(layingList({ chains: wound, endOneOn: "left", knotsTied: "behind the reed", weaverFaces })).toHaveLength(2);
  }
});

const laying = {
  chains: wound,
  endOneOn: "left",
  knotsTied: "in front of the reed",
  weaverFaces: "back of the loom",
} as const;
test.each<[string, () => unknown, string]>([
  [
    "a stripe wider than a chain may be",
    () => chains({ sequence: warp, most: 8, cutAt: "stripe edges" }),
    "does-not-fit",
  ],
  ["a step wider than a chain may be", () => chains({ sequence: warp, most: 3, cutAt: 4 }), "does-not-fit"],
  ["a place to cut that is none", () => chains({ sequence: warp, most: 3, cutAt: "edges" as never }), "unknown-word"],
  ["cutting after no ends", () => chains({ sequence: warp, most: 3, cutAt: 0 }), "out-of-range"],
  ["a chain of no ends", () => chains({ sequence: warp, most: 0, cutAt: 1 }), "out-of-range"],
  [
    "a group of more threads than ends",
    () => windingList({ sequence: warp, threads: 19, tieEvery: 5 }),
    "out-of-range",
  ],
  ["a group of no threads", () => windingList({ sequence: warp, threads: 0, tieEvery: 5 }), "out-of-range"],
  ["no count for the ties", () => windingList({ sequence: warp, threads: 2 } as never), "missing"],
  [
    "tying in front while facing away from the knots",
    () => layingList({ ...laying, weaverFaces: "front of the loom" }),
    "unknown-word",
  ],
  [
    "tying behind the heddles while facing away from them",
    () => layingList({ ...laying, knotsTied: "behind the heddles" }),
    "unknown-word",
  ],
  ["laying no chains", () => layingList({ ...laying, chains: [] }), "empty"],
  ["laying nothing at all", () => layingList(null as never), "missing"],
])("%s is refused", (_, call, code) => {
  expect(refusalOf(call).code).toBe(code);
});
test.each<[string, () => unknown, string]>([
  [
    "a stripe too wide for a chain",
    () => chains({ sequence: plain(9), most: 8, cutAt: "stripe edges" }),
    "chains({ most }): expected at least 9, the ends between two places for a cut, received 8. Allow longer chains, or more cuts.",
  ],
  [
    "more threads than ends",
    () => windingList({ sequence: plain(9), threads: 10, tieEvery: 50 }),
    "windingList({ threads }): expected at most the 9 ends of the sequence, received 10. Wind fewer threads together.",
  ],
])("%s is refused in so many words", (_, call, sentence) => {
  expect(refusalOf(call).message).toBe(sentence);
});

test("chains end only where they may, as few and as equal as those ends allow", () => {
  const cut = (most: number, cutAt: readonly number[]) =>
    chains({ sequence: plain(60), most, cutAt }).map(({ lastEnd }) => lastEnd);
  // 25² + 15² + 20² = 1250, and 10² + 30² + 20² = 1400.
  expect(cut(30, [10, 25, 40, 60])).toEqual([25, 40, 60]);
  expect(cut(35, [10, 25, 40, 60])).toEqual([25, 60]);
  expect(refusalOf(() => cut(19, [20, 40, 60])).code).toBe("does-not-fit");
  for (const places of [
    [20, 40],
    [40, 20, 60],
  ])
    expect(() => cut(60, places)).toThrow("{ cutAt }): expected ends in order, the last of them 60");
  expect(() => cut(60, [0, 60])).toThrow("{ cutAt[0] }): expected a whole number of 1 or more");
  expect(() => cut(60, [])).toThrow("{ cutAt }): expected at least one item");
  fc.assert(
    fc.property(fc.uniqueArray(fc.integer({ min: 1, max: 59 }), { maxLength: 9 }), upTo(40), (places, more) => {
      const cutAt = [...places.sort((a, b) => a - b), 60];
      const most = Math.max(...cutAt.map((place, index) => place - (cutAt[index - 1] ?? 0))) + more;
      const made = chains({ sequence: plain(60), most, cutAt }).map(({ sequence: { ends } }) => ends);
      expect([made.length, made.reduce((sum, ends) => sum + ends * ends, 0)]).toEqual(best([0, ...cutAt], most));
    }),
  );
});
test("each stripe is wound with its own number of threads, and ties stand at the ends named", () => {
  const warp = sequence([
    { colour: "oat", ends: 5 },
    { colour: "plum, plum, pink", ends: 9 },
  ]);
  const [oat, blend] = windingList({ sequence: warp, threads: [2, 3], tieEvery: [5, 8, 14] });
  expect(oat).toMatchObject({ passes: 3, dropForLastPass: 1, ties: [{ total: 5, endOfStripe: 5, pass: 3 }] });
  expect(blend).toMatchObject({ passes: 3, rounds: 1, dropForLastPass: 0, endsAt: "near peg" });
  expect(blend?.ties.map(({ total, pass }) => [total, pass])).toEqual([
    [8, 1],
    [14, 3],
  ]);
  expect(refusalOf(() => windingList({ sequence: warp, threads: [2], tieEvery: 5 })).path).toEqual(["threads"]);
  expect(refusalOf(() => windingList({ sequence: warp, threads: [2, 0], tieEvery: 5 })).code).toBe("out-of-range");
});
