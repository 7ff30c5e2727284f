import { law, stripes, upTo } from "#ci/law.js";
import { leastTime } from "#ci/processor-time.js";
import { refusalOf } from "#ci/refusal-of.js";
import fc from "fast-check";
import { expect, test } from "vitest";
import { fullSett } from "../sequence/full-sett.js";
import { totalsOf } from "../sequence/totals.js";
import { everyEnd } from "../sequence/every-end.js";
import { join } from "../sequence/join.js";
import { multiply } from "../sequence/multiply.js";
import { noEnds } from "../sequence/no-ends.js";
import { recolour } from "../sequence/recolour.js";
import { reverse } from "../sequence/reverse.js";
import { rotate } from "../sequence/rotate.js";
import { sequence, type Sequence } from "../sequence/sequence.js";
import { countDisagreements } from "./count-disagreements.js";
import { edited } from "./edited.js";
import { sameStripes } from "./same-stripes.js";
import { firstDifference } from "./first-difference.js";
import { likeness } from "./likeness.js";
import { shortestEdit } from "./shortest-edit.js";
import { stripesInGroup } from "./stripes-in-group.js";

const warps = stripes.map(sequence);
const written = (text: string): Sequence<string> =>
  sequence(text.split(" ").map((part) => ({ colour: part.replace(/\d/g, ""), ends: Number(part.replace(/\D/g, "")) })));
const changed = (from: Sequence<string>, to: Sequence<string>): number => shortestEdit({ from, to }).changed;

law(
  23,
  "the fewest ends changed are none only for equal warps, as many both ways, never more by a detour",
  [warps, warps, warps],
  (a, b, c) => {
    const d = changed(a, b);
    expect(d === 0).toBe(sameStripes({ first: a, second: b }));
    expect(changed(b, a)).toBe(d);
    expect(changed(a, c)).toBeLessThanOrEqual(d + changed(b, c));
    expect(d).toBeGreaterThanOrEqual(Math.abs(a.ends - b.ends));
    expect(d).toBeLessThanOrEqual(a.ends + b.ends);
    expect((a.ends + b.ends - d) % 2).toBe(0);
    expect(changed(reverse(a), reverse(b))).toBe(d);
    expect(changed(join([a, c]), join([b, c]))).toBe(d);
    const [one, other] = [totalsOf(a), totalsOf(b)];
    const colours = new Set([...one.keys(), ...other.keys()]);
    expect(d).toBeGreaterThanOrEqual(
      [...colours].reduce((sum, colour) => sum + Math.abs((one.get(colour) ?? 0) - (other.get(colour) ?? 0)), 0),
    );
  },
);
law(33, "the edit from one warp to another, applied, gives the other", [warps, warps], (a, b) => {
  const edit = shortestEdit({ from: a, to: b });
  expect(edited({ sequence: a, edit }).runs).toEqual(b.runs);
  const moved = edit.steps.filter(({ change }) => change !== "keep").reduce((sum, { ends }) => sum + ends, 0);
  expect(moved).toBe(edit.changed);
});
/** The fewest ends changed, by the plainest recursion there is. */
function fewest(a: readonly string[], b: readonly string[]): number {
  const known = new Map<number, number>();
  const from = (i: number, j: number): number => {
    if (i === a.length || j === b.length) return a.length - i + b.length - j;
    const key = i * 1000 + j;
    const found = known.get(key) ?? (a[i] === b[j] ? from(i + 1, j + 1) : 1 + Math.min(from(i + 1, j), from(i, j + 1)));
    known.set(key, found);
    return found;
  };
  return from(0, 0);
}
test("the fewest ends changed agree with the plainest way to count them", () => {
  fc.assert(
    fc.property(warps, warps, (a, b) => {
      expect(changed(a, b)).toBe(fewest(everyEnd(a), everyEnd(b)));
    }),
    { numRuns: 1000 },
  );
});
test("two warps of 1,200 ends are compared in a moment, however unlike", () => {
  const unlike = (seed: number) =>
    sequence(
      Array.from({ length: 480 }, (_, index) => ({
        colour: ["a", "b", "c", "d"][(index * seed + (index % 7)) % 4] ?? "a",
        ends: 1 + ((index * seed) % 4),
      })),
    );
  const [first, second] = [unlike(7), unlike(5)];
  expect(changed(first, second)).toBeGreaterThan(0);
  expect(leastTime(() => changed(first, second), 3)).toBeLessThan(500);
});
test("an edit in words: one stripe wider, one left out", () => {
  expect(shortestEdit({ from: written("ash12 coal4 ash8"), to: written("ash14 coal4 weld2 ash8") })).toEqual({
    changed: 4,
    steps: [
      { change: "keep", colour: "ash", ends: 12 },
      { change: "put in", colour: "ash", ends: 2 },
      { change: "keep", colour: "coal", ends: 4 },
      { change: "put in", colour: "weld", ends: 2 },
      { change: "keep", colour: "ash", ends: 8 },
    ],
  });
  expect(changed(noEnds, written("ash12"))).toBe(12);
});

law(
  17,
  "a warp begun at another end is like itself up to rotation, and the rotation found gives it",
  [warps, upTo(200)],
  (a, by) => {
    const moved = rotate({ sequence: a, by });
    const found = likeness({ first: a, second: moved, upTo: ["rotation"] });
    expect(rotate({ sequence: a, by: found?.rotatedBy ?? NaN }).runs).toEqual(moved.runs);
  },
);
law(
  19,
  "turned, begun elsewhere, scaled and recoloured at once, a warp is still known, and the way found gives it",
  [warps, upTo(200), upTo(4)],
  (a, by, more) => {
    const colours = new Map([
      ["ash", "rye"],
      ["coal", "ash"],
      ["madder", "oat"],
      ["weld", "coal"],
    ]);
    const scaled = multiply({ sequence: rotate({ sequence: reverse(a), by }), by: more + 1 });
    const second = recolour({ sequence: scaled, colours });
    const found = likeness({ first: a, second, upTo: ["rotation", "reversal", "scale", "recolouring"] });
    expect(found?.scale).toEqual({ second: more + 1, first: 1 });
    const from = found?.reversed === true ? reverse(a) : a;
    const again = multiply({ sequence: rotate({ sequence: from, by: found?.rotatedBy ?? NaN }), by: more + 1 });
    expect(
      recolour({ sequence: again, colours: new Map(found?.colours.map(({ first, second }) => [first, second])) }).runs,
    ).toEqual(second.runs);
  },
);
test("nothing is overlooked that was not allowed", () => {
  const warp = written("a3 b1 c2");
  const like = (second: Sequence<string>, upTo: Parameters<typeof likeness<string>>[0]["upTo"]) =>
    likeness({ first: warp, second, upTo });
  expect(like(warp, [])).toMatchObject({ reversed: false, rotatedBy: 0, scale: { second: 1, first: 1 } });
  expect(like(rotate({ sequence: warp, by: 2 }), ["reversal", "scale", "recolouring"])).toBeNull();
  expect(like(reverse(warp), ["scale", "recolouring"])).toBeNull();
  expect(like(reverse(warp), ["reversal"])?.reversed).toBe(true);
  expect(like(multiply({ sequence: warp, by: 2 }), ["rotation", "reversal", "recolouring"])).toBeNull();
  expect(like(written("b3 a1 c2"), ["rotation", "reversal", "scale"])).toBeNull();
  expect(like(written("b3 a1 b2"), ["recolouring"])).toBeNull();
  expect(likeness({ first: written("b3 a1 b2 c1"), second: warp, upTo: ["recolouring"] })).toBeNull();
  expect(like(written("a3 b1 c3"), ["rotation", "scale", "recolouring"])).toBeNull();
  expect(like(written("a6 b2 c4"), ["scale"])?.scale).toEqual({ second: 2, first: 1 });
});
test("two counts of one tartan that disagree are no scale of one another", () => {
  const law2008 = written("B44 R6 B4 N6 K28 G40 Y4 G40 K28 B22 T12");
  const book = written("B22 R6 B4 N6 K24 G40 Y4 K24 B22 T6");
  const [one, other] = [
    fullSett({ sett: law2008, pivots: "full count" }),
    fullSett({ sett: book, pivots: "half count" }),
  ];
  expect(likeness({ first: one, second: other, upTo: ["rotation", "reversal", "scale", "recolouring"] })).toBeNull();
  // 412 ends less 316: the book left out 96 ends of the law and changed none.
  expect(changed(one, other)).toBe(412 - 316);
});

law(16, "two warps part where the ends counted one by one first differ", [warps, warps], (a, b) => {
  const [one, other] = [everyEnd(a), everyEnd(b)];
  const at = Array.from({ length: Math.max(one.length, other.length) }, (_, index) => index).find(
    (index) => one[index] !== other[index],
  );
  const found = firstDifference({ first: a, second: b });
  if (at === undefined) expect(found).toBeNull();
  else expect(found).toEqual({ end: at + 1, first: one[at], second: other[at] });
});
law(16, "a warp that goes on where the other stops parts from it there", [warps, warps], (a, b) => {
  expect(firstDifference({ first: a, second: join([a, b]) })).toMatchObject({ end: a.ends + 1, first: undefined });
});

test("a group counted off at the loom shows the stripes that lie in it", () => {
  expect(stripesInGroup({ sequence: written("ash12 coal4 ash8"), firstEnd: 11, lastEnd: 17 })).toEqual([
    { stripe: 1, colour: "ash", firstEnd: 11, lastEnd: 12, ends: 2, ofEnds: 12 },
    { stripe: 2, colour: "coal", firstEnd: 13, lastEnd: 16, ends: 4, ofEnds: 4 },
    { stripe: 3, colour: "ash", firstEnd: 17, lastEnd: 17, ends: 1, ofEnds: 8 },
  ]);
});
test("the groups of a warp hold every end once", () => {
  fc.assert(
    fc.property(warps, upTo(9), (a, more) => {
      const size = more + 1;
      const groups = Array.from({ length: Math.ceil(a.ends / size) }, (_, index) =>
        stripesInGroup({ sequence: a, firstEnd: index * size + 1, lastEnd: Math.min(a.ends, (index + 1) * size) }),
      );
      expect(groups.flat().flatMap(({ colour, ends }) => Array.from({ length: ends }, () => colour))).toEqual(
        everyEnd(a),
      );
    }),
    { numRuns: 1000 },
  );
});
test("printed totals that disagree with the stripes are told, both figures side by side", () => {
  const scarf = written("aqua9 black8 aqua8 black8 aqua8 black8 aqua9");
  expect(
    countDisagreements({
      sequence: scarf,
      printedTotal: 58,
      printedOfColour: new Map([
        ["aqua", 34],
        ["black", 24],
      ]),
    }),
  ).toEqual([]);
  expect(
    countDisagreements({
      sequence: scarf,
      printedTotal: 60,
      printedOfColour: new Map([
        ["aqua", 34],
        ["red", 2],
      ]),
    }),
  ).toEqual([
    { colour: undefined, printed: 60, counted: 58 },
    { colour: "red", printed: 2, counted: 0 },
  ]);
  expect(countDisagreements({ sequence: scarf, printedTotal: null, printedOfColour: new Map() })).toEqual([]);
});

const warp = written("ash12 coal4 ash8");
const other = written("ash10 coal4");
test.each<[string, () => unknown, string]>([
  ["comparing with a copy", () => sameStripes({ first: warp, second: structuredClone(warp) }), "wrong-kind"],
  ["a liberty that is none", () => likeness({ first: warp, second: other, upTo: ["length" as never] }), "unknown-word"],
  ["liberties in a word", () => likeness({ first: warp, second: other, upTo: "scale" as never }), "wrong-kind"],
  ["likeness to no ends", () => likeness({ first: warp, second: noEnds, upTo: [] }), "empty"],
  [
    "the edit of another warp",
    () => edited({ sequence: other, edit: shortestEdit({ from: warp, to: other }) }),
    "does-not-fit",
  ],
  [
    "an edit that leaves ends over",
    () => edited({ sequence: warp, edit: { changed: 0, steps: [{ change: "keep", colour: "ash", ends: 12 }] } }),
    "does-not-fit",
  ],
  [
    "an edit of unknown steps",
    () =>
      edited({ sequence: warp, edit: { changed: 0, steps: [{ change: "move", colour: "ash", ends: 12 }] } as never }),
    "unknown-word",
  ],
  ["an edit without steps", () => edited({ sequence: warp, edit: {} as never }), "missing"],
  ["a group past the last end", () => stripesInGroup({ sequence: warp, firstEnd: 20, lastEnd: 25 }), "out-of-range"],
  [
    "a group that ends before it begins",
    () => stripesInGroup({ sequence: warp, firstEnd: 9, lastEnd: 8 }),
    "out-of-range",
  ],
  [
    "printed totals in an object",
    () => countDisagreements({ sequence: warp, printedTotal: 24, printedOfColour: {} as never }),
    "wrong-kind",
  ],
  [
    "a printed total that is not whole",
    () => countDisagreements({ sequence: warp, printedTotal: 24.5, printedOfColour: new Map() }),
    "not-whole",
  ],
  [
    "two warps unlike over many thousands of ends",
    () =>
      shortestEdit({ from: sequence([{ colour: "a", ends: 20_001 }]), to: sequence([{ colour: "b", ends: 20_001 }]) }),
    "too-long",
  ],
])("%s is refused", (_, call, code) => {
  expect(refusalOf(call).code).toBe(code);
});
