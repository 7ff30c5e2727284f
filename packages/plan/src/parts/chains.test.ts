import fc from "fast-check";
import { expect, test } from "vitest";
import type { Runs } from "../job/runs.js";
import type { Stripe } from "../job/stripes.js";
import { againstOrder, chainsOf } from "./chains.js";
import type { WarpChain } from "./chains.js";
import { groupsOf } from "./groups.js";
import { laid } from "./laid.js";
import { STRIPES } from "./laid-stripes.js";
import { facing, layingOf } from "./laying.js";
import { threadsHeld, woundChain } from "./winding.js";

const of = (ends: number, ...yarns: string[]): Stripe => ({ ends, yarns });
const warp = (list: Runs<Stripe>, ends: number) => {
  const { runs } = laid(list, STRIPES);
  return { runs, groups: groupsOf(runs, ends) };
};
const napkins = warp(
  [
    of(24, "natural"),
    {
      mirror: [of(40, "madder"), { repeat: 3, of: [of(12, "natural"), of(6, "indigo")] }, of(66, "natural")],
      middle: "twice",
    },
    of(24, "natural"),
  ],
  24,
);
const scarves = warp(
  [
    of(20, "ash"),
    { repeat: 5, of: [of(16, "moss"), of(8, "ash"), of(4, "gold"), of(8, "ash")] },
    of(16, "moss"),
    of(20, "ash"),
  ],
  20,
);
const sizes = (chains: readonly WarpChain[]): readonly number[] => chains.map(({ ends }) => ends);

test("the hall napkins by stripe in chains of 118, 132 and 118", () => {
  const { chains } = chainsOf(napkins.runs, napkins.groups, "by stripe", 140);
  expect(sizes(chains)).toEqual([118, 132, 118]);
  expect(chains[1]?.parts).toMatchObject([{ stripe: 9, firstEnd: 119, lastEnd: 250 }]);
  expect(chainsOf(napkins.runs, napkins.groups, "by stripe", null)).toMatchObject({ chains: [], waitsForMost: true });
  const [wide] = chainsOf(napkins.runs, napkins.groups, "by stripe", 100).tooWide;
  expect(wide?.says).toBe("Stripe 9 has 132 ends, a chain at most 100. Cut by group, or allow longer chains.");
  expect(sizes(chainsOf(napkins.runs, napkins.groups, "by group", 100).chains).every((ends) => ends <= 100)).toBe(true);
});

test("the madder chain by colour: 80 ends, ties at 24, 40, 64 and 80", () => {
  const { chains } = chainsOf(napkins.runs, napkins.groups, "by colour", null);
  expect(sizes(chains)).toEqual([252, 80, 36]);
  const madder = chains[1];
  expect(madder?.parts.map(({ firstEnd, lastEnd }) => [firstEnd, lastEnd])).toEqual([
    [25, 64],
    [305, 344],
  ]);
  const wound = woundChain(madder ?? { chain: 2, ends: 0, parts: [] }, napkins.groups, 2);
  expect(wound.parts.flatMap(({ ties }) => ties.map(({ total, group }) => [total, group]))).toEqual([
    [24, 2],
    [40, 3],
    [64, 22],
    [80, 23],
  ]);
  expect(wound.passes).toBe(40);
});

test("scarves by colour within 80 g: one chain each of 120, 96 and 20 ends", () => {
  const { chains } = chainsOf(scarves.runs, scarves.groups, "by colour", { ash: 132, moss: 132, gold: 132 });
  expect(sizes(chains)).toEqual([120, 96, 20]);
  expect(sizes(chainsOf(scarves.runs, scarves.groups, "by colour", 60).chains)).toEqual([60, 60, 48, 48, 20]);
  expect(againstOrder(chains, "one colour at a time")).toEqual([]);
  const mixed = chainsOf(scarves.runs, scarves.groups, "by stripe", 130).chains;
  expect(againstOrder(mixed, "one colour at a time")[0]?.values).toEqual({ chains: [1, 2] });
  expect(againstOrder(mixed, "from end 1")).toEqual([]);
});

test("sections of forty ends, and pairs within the most of a chain", () => {
  expect(sizes(chainsOf(napkins.runs, napkins.groups, { every: 40 }, null).chains)).toEqual([
    ...Array<number>(9).fill(40),
    8,
  ]);
  expect(sizes(chainsOf(scarves.runs, scarves.groups, { every: 2 }, 101).chains)).toEqual([78, 78, 80]);
  expect(chainsOf(napkins.runs, napkins.groups, { every: 40 }, 30).tooWide.length).toBe(1);
});

test("a blend is wound by whole hands: held twice among four threads, by its own hand among two", () => {
  expect([threadsHeld(2, 4), threadsHeld(3, 2), threadsHeld(1, 3), threadsHeld(4, 2)]).toEqual([4, 3, 3, 4]);
  const { runs, groups } = warp([of(20, "natural"), of(48, "plum", "pink"), of(9, "plum", "plum", "pink")], 24);
  const { chains } = chainsOf(runs, groups, "by stripe", 150);
  const [chain = { chain: 1, ends: 0, parts: [] }] = chains;
  const [natural, pair, three] = woundChain(chain, groups, 2).parts;
  expect(natural).toMatchObject({ threads: 2, byItsHand: false, passes: 10, endsAt: "near peg" });
  expect(pair).toMatchObject({ threads: 2, byItsHand: false, passes: 24, rounds: 12, halfRound: false });
  // Three hands: ends at the far peg.
  expect(three).toMatchObject({ threads: 3, byItsHand: true, passes: 3, halfRound: true, endsAt: "far peg" });
  expect(pair?.ties.map(({ endOfStripe, pass }) => [endOfStripe, pass])).toEqual([
    [24, 12],
    [48, 24],
  ]);
  const four = woundChain(chain, groups, 4).parts;
  expect(four.map(({ passes, dropForLastPass }) => [passes, dropForLastPass])).toEqual([
    [5, 0],
    [12, 0],
    [3, 0],
  ]);
  const single = warp([of(1, "gold"), of(5, "ash")], 24);
  const gold = chainsOf(single.runs, single.groups, "by colour", null).chains[0];
  expect(woundChain(gold ?? chain, single.groups, 2).parts[0]).toMatchObject({ passes: 1, dropForLastPass: 1 });
});

test("chains lie as the weaver sits", () => {
  const { chains } = chainsOf(napkins.runs, napkins.groups, "by stripe", 140);
  expect(facing("in front of the reed", null)).toBe("back of the loom");
  expect([facing("behind the heddles", null), facing("behind the reed", null)]).toEqual(["front of the loom", null]);
  const seat = { knots: "in front of the reed", faces: "back of the loom" } as const;
  const places = (endOneOn: "left" | "right") => layingOf(chains, { endOneOn, ...seat }).map(({ chain }) => chain);
  expect([places("left"), places("right")]).toEqual([
    [1, 2, 3],
    [3, 2, 1],
  ]);
});

test("chains hold every end once, by whatever they are cut", () => {
  const stripe = fc.record({
    ends: fc.integer({ min: 1, max: 12 }).map((hands) => hands * 2),
    yarns: fc.constantFrom(["a"], ["b"], ["a", "b"]),
  });
  const by = fc.constantFrom("by stripe" as const, "by group" as const, "by colour" as const, { every: 3 });
  fc.assert(
    fc.property(
      fc.array(stripe, { minLength: 1, maxLength: 9 }),
      by,
      fc.integer({ min: 1, max: 5 }),
      (list, cut, threads) => {
        const { runs, groups } = warp(list, 6);
        const most = Math.max(3, ...runs.map(({ ends }) => ends));
        const { chains } = chainsOf(runs, groups, cut, most);
        const ends = chains.flatMap(({ parts }) =>
          parts.flatMap((part) => Array.from({ length: part.ends }, (_, at) => part.firstEnd + at)),
        );
        expect(ends.sort((a, b) => a - b)).toEqual(
          Array.from({ length: runs.at(-1)?.lastEnd ?? 0 }, (_, at) => at + 1),
        );
        for (const chain of chains) {
          expect(chain.ends).toBeLessThanOrEqual(most);
          const wound = woundChain(chain, groups, threads);
          expect(wound.parts.at(-1)?.runningTotal).toBe(chain.ends);
          for (const part of wound.parts) expect(part.passes * part.threads - part.dropForLastPass).toBe(part.ends);
        }
        const ties = chains.flatMap((chain) =>
          woundChain(chain, groups, threads).parts.flatMap((part) => part.ties.map(({ group }) => group)),
        );
        expect(ties.sort((a, b) => a - b)).toEqual(groups.map(({ group }) => group));
      },
    ),
  );
});
