import fc from "fast-check";
import { expect, test } from "vitest";
import type { Runs } from "../job/runs.js";
import type { Stripe } from "../job/stripes.js";
import { isOpen, laid } from "./laid.js";
import { SLEY } from "./laid-dents.js";
import { THREADING, bareRepeat } from "./laid-heddles.js";
import { STRIPES } from "./laid-stripes.js";

const of = (ends: number | "the rest", ...yarns: string[]): Stripe => ({ ends, yarns });
const inTurn = (ends: number, ...yarns: string[]): Stripe => ({ ends, yarns, order: "strictly in turn" });
const text = (list: Runs<Stripe>, room?: number): string =>
  laid(list, STRIPES, room)
    .runs.map(({ ends, yarns, order }) => `${String(ends)} ${yarns.join(order === undefined ? " + " : " / ")}`)
    .join(", ");

test("the smallest job has 156 ends, and its middle stands once", () => {
  const list: Runs<Stripe> = [
    of(24, "oat"),
    { mirror: [of(40, "rose"), of(8, "oat"), of(12, "slate")], middle: "once" },
    of(24, "oat"),
  ];
  expect(text(list)).toBe("24 oat, 40 rose, 8 oat, 12 slate, 8 oat, 40 rose, 24 oat");
  expect(laid(list, STRIPES).size).toBe(156);
});

test("the hall napkins have 368 ends, and their middle of 66 twice is one stripe of 132", () => {
  const list: Runs<Stripe> = [
    of(24, "natural"),
    {
      mirror: [of(40, "madder"), { repeat: 3, of: [of(12, "natural"), of(6, "indigo")] }, of(66, "natural")],
      middle: "twice",
    },
    of(24, "natural"),
  ];
  const { runs, size, open } = laid(list, STRIPES);
  expect([size, open]).toEqual([368, null]);
  expect(runs.find(({ ends }) => ends === 132)).toEqual({ yarns: ["natural"], ends: 132, firstEnd: 119, lastEnd: 250 });
  const ends = (yarn: string): number => runs.reduce((sum, run) => sum + (run.yarns[0] === yarn ? run.ends : 0), 0);
  expect([ends("natural"), ends("madder"), ends("indigo")]).toEqual([252, 80, 36]);
});

test("plum towels fill 440 places with four repeats of 100 ends", () => {
  const list: Runs<Stripe> = [
    of(20, "natural"),
    {
      repeat: "the rest",
      of: [of(48, "plum", "pink"), of(24, "natural"), of(9, "plum", "plum", "pink"), of(19, "natural")],
    },
    of(20, "natural"),
  ];
  expect(isOpen(list, STRIPES)).toBe(true);
  const { size, open } = laid(list, STRIPES, 440);
  expect([size, open]).toEqual([440, { number: 4, over: 0, closes: [440, 440] }]);
  expect(laid(list, STRIPES, 475).open).toEqual({ number: 4, over: 35, closes: [440, 540] });
  expect(laid(list, STRIPES, 40)).toMatchObject({ size: 40, open: { number: 0 }, runs: [of(40, "natural")] });
  expect(() => laid(list, STRIPES, 39)).toThrow("room for the 40 ends beside the open place, received room for 39");
});

test("blankets: the middle of a mirror fills 360 places", () => {
  const list: Runs<Stripe> = [
    {
      mirror: [of(32, "slate"), { repeat: 2, of: [of(8, "cream"), of(8, "slate")] }, of("the rest", "oat")],
      middle: "once",
    },
  ];
  const { runs, size, open } = laid(list, STRIPES, 360);
  // 2 × (32 + 4 × 8) = 128; 360 − 128 = 232.
  expect([size, open?.number, runs.length]).toEqual([360, 232, 11]);
  const twice: Runs<Stripe> = [{ mirror: [of(32, "slate"), of("the rest", "oat")], middle: "twice" }];
  expect(laid(twice, STRIPES, 101).open).toEqual({ number: 18, over: 1, closes: [100, 102] });
});

test("an open repeat that ends a mirror comes to nothing where only the border fits", () => {
  const list: Runs<Stripe> = [
    { mirror: [of(10, "slate"), { repeat: "the rest", of: [of(4, "oat"), of(2, "cream")] }], middle: "once" },
  ];
  // None: 10 slate once. One: 2 × 14 + 2 = 30, each more 12.
  expect([10, 29, 30, 42].map((room) => laid(list, STRIPES, room).size)).toEqual([10, 10, 30, 42]);
  expect(laid(list, STRIPES, 29).open).toEqual({ number: 0, over: 19, closes: [10, 30] });
});

test("neighbours of one yarn count together in the middle, and the way back turns what is strictly in turn", () => {
  const list: Runs<Stripe> = [{ mirror: [of(4, "oat"), of(3, "rose"), of(2, "rose")], middle: "once" }];
  expect(text(list)).toBe("4 oat, 5 rose, 4 oat");
  expect(text([{ mirror: [inTurn(4, "plum", "pink"), of(2, "oat")], middle: "once" }])).toBe(
    "4 plum / pink, 2 oat, 4 pink / plum",
  );
  expect(text([of(4, "plum", "pink"), of(2, "pink", "plum")])).toBe("6 plum + pink");
  expect(text([of("the rest", "plum", "pink")], 7)).toBe("6 plum + pink");
});

test("a threading written whole fills the old places, and a sley the same", () => {
  const threading = laid(
    [
      "floating" as const,
      { ends: 2, shaft: 3 },
      { ends: 2, shaft: 4 },
      { repeat: "the rest" as const, of: [1, 2, 3, 4] },
      { ends: 2, shaft: 1 },
      { ends: 2, shaft: 2 },
      "floating" as const,
    ],
    THREADING,
    370,
  );
  expect([threading.size, threading.open?.number, threading.runs.length]).toEqual([370, 90, 366]);
  const sley = laid(
    [
      { dents: 1, at: 1 },
      { dents: 1, at: 4 },
      { repeat: "the rest" as const, of: [2] },
      { dents: 1, at: 4 },
      { dents: 1, at: 1 },
    ],
    SLEY,
    370,
  );
  expect(sley.runs.reduce((sum, { dents }) => sum + dents, 0)).toBe(184);
  expect([bareRepeat([1, 2, 3]), bareRepeat([1, { ends: 2, shaft: 1 }])]).toEqual([[1, 2, 3], null]);
  expect(laid([{ ends: 10, at: 3 }, { empty: 4 }], SLEY).runs).toEqual([
    { dents: 4, at: 3, ends: 10 },
    { dents: 4, at: 0, ends: 0 },
  ]);
});

const stripes: fc.Arbitrary<Runs<Stripe>> = fc.letrec<{ list: Runs<Stripe>; item: Runs<Stripe>[number] }>((tie) => ({
  list: fc.array(tie("item"), { minLength: 1, maxLength: 3 }),
  item: fc.oneof(
    { maxDepth: 2 },
    fc.record({ ends: fc.integer({ min: 1, max: 5 }), yarns: fc.constantFrom(["a"], ["b"], ["c"]) }),
    fc.record({ repeat: fc.integer({ min: 1, max: 3 }), of: tie("list") }),
    fc.record({ mirror: tie("list"), middle: fc.constantFrom("once" as const, "twice" as const) }),
  ),
})).list;

/** End by end, as the words say it. */
function listed(list: Runs<Stripe>): string {
  return list
    .map((item) => {
      if ("repeat" in item) return listed(item.of).repeat(Number(item.repeat));
      if (!("mirror" in item)) return (item.yarns[0] ?? "").repeat(Number(item.ends));
      const there = listed(item.mirror);
      const last = there.length - (/(.)\1*$/u.exec(there)?.[0].length ?? 0);
      return (
        there +
        Array.from(item.middle === "once" ? there.slice(0, last) : there)
          .reverse()
          .join("")
      );
    })
    .join("");
}

test("whatever is written lies as it would end by end, whatever the room", () => {
  fc.assert(
    fc.property(stripes, stripes, fc.integer({ min: 0, max: 30 }), fc.boolean(), (list, other, more, mirrored) => {
      const { runs, size } = laid(list, STRIPES);
      expect(runs.map(({ yarns, ends }) => (yarns[0] ?? "").repeat(ends)).join("")).toBe(listed(list));
      expect(runs.every((run, at) => run.firstEnd === (runs[at - 1]?.lastEnd ?? 0) + 1)).toBe(true);
      expect(runs.at(-1)?.lastEnd).toBe(size);
      const open = (repeat: number | "the rest"): Runs<Stripe> => {
        const filled: Runs<Stripe> = [...other, { repeat, of: list }];
        return mirrored ? [{ mirror: filled, middle: "once" }] : filled;
      };
      const room = laid(mirrored ? [{ mirror: other, middle: "once" as const }] : other, STRIPES).size + more;
      const found = laid(open("the rest"), STRIPES, room);
      const sizes = [room - more];
      while ((sizes.at(-1) ?? 0) <= room) sizes.push(laid(open(sizes.length), STRIPES).size);
      const fitting = sizes.filter((one) => one <= room);
      expect(found.open?.number).toBe(fitting.length - 1);
      expect(found.size + (found.open?.over ?? 0)).toBe(room);
      const above = found.open?.over === 0 ? room : sizes[fitting.length];
      expect(found.open?.closes).toEqual([fitting.at(-1), above]);
    }),
    { numRuns: 60 },
  );
});

test("20,000 ends in 300 stripes are laid without a list spread out", () => {
  const list: Runs<Stripe> = Array.from({ length: 300 }, (_, at) => of(66, at % 2 === 0 ? "oat" : "rose"));
  expect(laid(list, STRIPES).size).toBe(19_800);
  expect(laid([{ repeat: "the rest" as const, of: [1, 2, 3, 4] }], THREADING, 200_000).runs.length).toBe(200_000);
});

test("a million places are laid, and not one more, dents without an end among them", () => {
  const empty = (times: number): unknown => laid([{ repeat: times, of: [{ empty: 1 }] }], SLEY).size;
  expect(empty(1_000_000)).toBe(0);
  expect(() => empty(1_000_001)).toThrow("at most 1000000 ends");
});
