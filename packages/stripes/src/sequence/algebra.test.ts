import { law, stripes, upTo } from "#ci/law.js";
import { refusalOf } from "#ci/refusal-of.js";
import fc from "fast-check";
import { expect, test } from "vitest";
import { colourOfEnd } from "./colour-of-end.js";
import { edges } from "./edges.js";
import { endsPerColour } from "./ends-per-colour.js";
import { everyEnd } from "./every-end.js";
import { join } from "./join.js";
import { mirror } from "./mirror.js";
import { multiply } from "./multiply.js";
import { noEnds } from "./no-ends.js";
import { pivot } from "./pivot.js";
import { recolour } from "./recolour.js";
import { repeat } from "./repeat.js";
import { reverse } from "./reverse.js";
import { rotate } from "./rotate.js";
import { sequenceFromEnds } from "./sequence-from-ends.js";
import { sequence, type Sequence } from "./sequence.js";
import { slice } from "./slice.js";

/** "colours[1]" as a path. */
function pathOf(place: string): readonly (string | number)[] {
  return (place.match(/[a-z]+|\d+/giu) ?? []).map((part) => (/\d/u.test(part) ? Number(part) : part));
}

const warps = stripes.map(sequence);
const last = (warp: Sequence<string>): number => warp.runs.at(-1)?.ends ?? 0;
const perColour = (of: Sequence<string>): Map<string, number> =>
  new Map(endsPerColour(of).map(({ colour, ends }) => [colour, ends]));
const total = (one: Sequence<string>, other: Sequence<string>): Map<string, number> => {
  const sum = perColour(one);
  for (const { colour, ends } of endsPerColour(other)) sum.set(colour, (sum.get(colour) ?? 0) + ends);
  return sum;
};
const sameRuns = (one: Sequence<string>, other: Sequence<string>): void => {
  expect(one.runs).toEqual(other.runs);
};

law(1, "ends counted one by one give the sequence they came from", [warps], (a) => {
  sameRuns(sequenceFromEnds(everyEnd(a)), a);
});
law(
  3,
  "joining is the same in whatever order it is done, and no ends change nothing",
  [warps, warps, warps],
  (a, b, c) => {
    sameRuns(join([join([a, b]), c]), join([a, join([b, c])]));
    sameRuns(join([noEnds, a]), a);
    sameRuns(join([a, noEnds]), a);
  },
);
law(4, "the ends of a join are the ends of its parts", [warps, warps], (a, b) => {
  expect(join([a, b]).ends).toBe(a.ends + b.ends);
});
law(5, "a join has the stripes of its parts, or one fewer", [warps, warps], (a, b) => {
  const parts = a.runs.length + b.runs.length;
  expect(parts - join([a, b]).runs.length).toBe(a.runs.at(-1)?.colour === b.runs[0]?.colour ? 1 : 0);
});
law(6, "ends per colour add up when sequences are joined", [warps, warps], (a, b) => {
  expect(perColour(join([a, b]))).toEqual(total(a, b));
});
law(7, "turning a warp round twice changes nothing", [warps], (a) => {
  sameRuns(reverse(reverse(a)), a);
  expect(reverse(reverse(a)).written).toEqual(a.written);
});
law(8, "a join turned round is its parts turned round, last one first", [warps, warps], (a, b) => {
  sameRuns(reverse(join([a, b])), join([reverse(b), reverse(a)]));
  expect(perColour(reverse(a))).toEqual(perColour(a));
});
law(9, "repeats add up; none gives no ends, one changes nothing", [warps, upTo(5), upTo(5)], (a, k, m) => {
  sameRuns(
    repeat({ sequence: a, times: k + m }),
    join([repeat({ sequence: a, times: k }), repeat({ sequence: a, times: m })]),
  );
  sameRuns(repeat({ sequence: a, times: 0 }), noEnds);
  sameRuns(repeat({ sequence: a, times: 1 }), a);
});
law(
  10,
  "a repeat repeated is one repeat, and may be turned round before or after",
  [warps, upTo(4), upTo(4)],
  (a, k, m) => {
    const once = repeat({ sequence: a, times: k });
    sameRuns(repeat({ sequence: once, times: m }), repeat({ sequence: a, times: k * m }));
    sameRuns(reverse(once), repeat({ sequence: reverse(a), times: k }));
  },
);
law(11, "a repeat that begins and ends in one colour loses a stripe at each meeting", [warps, upTo(5)], (a, more) => {
  fc.pre(a.runs.length > 1);
  const k = more + 1;
  const meets = a.runs[0]?.colour === a.runs.at(-1)?.colour;
  expect(repeat({ sequence: a, times: k }).runs.length).toBe(k * a.runs.length - (meets ? k - 1 : 0));
});
law(12, "a mirrored warp reads the same from both sides and has twice the ends", [warps], (a) => {
  sameRuns(mirror(a), reverse(mirror(a)));
  expect(mirror(a).ends).toBe(2 * a.ends);
});
law(13, "a pivoted warp reads the same from both sides and has its last stripe once", [warps], (a) => {
  sameRuns(pivot(a), reverse(pivot(a)));
  expect(pivot(a).ends).toBe(2 * a.ends - last(a));
});
law(16, "two parts cut at one end make the whole", [warps, upTo(1e6)], (a, anywhere) => {
  const cut = anywhere % (a.ends + 1);
  const parts = [slice({ sequence: a, after: 0, upTo: cut }), slice({ sequence: a, after: cut, upTo: a.ends })];
  sameRuns(join(parts), a);
  expect(parts[0]?.ends).toBe(cut);
});
law(
  17,
  "moving j ends and then k is moving j + k; moving all changes nothing",
  [warps, upTo(99), upTo(99)],
  (a, j, k) => {
    const moved = rotate({ sequence: rotate({ sequence: a, by: j }), by: k });
    sameRuns(moved, rotate({ sequence: a, by: j + k }));
    sameRuns(rotate({ sequence: a, by: a.ends }), a);
    expect(perColour(moved)).toEqual(perColour(a));
  },
);
law(
  18,
  "multiplying multiplies the ends, twice over if done twice, before or after joining and turning",
  [warps, warps, upTo(6), upTo(6)],
  (a, b, j, k) => {
    const times = (one: Sequence<string>, by: number): Sequence<string> => multiply({ sequence: one, by });
    expect(times(a, k + 1).ends).toBe((k + 1) * a.ends);
    sameRuns(times(times(a, j + 1), k + 1), times(a, (j + 1) * (k + 1)));
    sameRuns(times(reverse(a), k + 1), reverse(times(a, k + 1)));
    sameRuns(times(join([a, b]), k + 1), join([times(a, k + 1), times(b, k + 1)]));
  },
);
law(
  19,
  "other colours keep the ends, may be given before or after turning and joining, and add no stripe",
  [warps, warps],
  (a, b) => {
    const colours = new Map([
      ["ash", "rye"],
      ["coal", "rye"],
      ["madder", "oat"],
      ["weld", "ash"],
    ]);
    const dyed = (one: Sequence<string>): Sequence<string> => recolour({ sequence: one, colours });
    expect(dyed(a).ends).toBe(a.ends);
    expect(dyed(a).runs.length).toBeLessThanOrEqual(a.runs.length);
    sameRuns(dyed(reverse(a)), reverse(dyed(a)));
    sameRuns(dyed(join([a, b])), join([dyed(a), dyed(b)]));
  },
);

test("every end has the colour found by counting", () => {
  fc.assert(
    fc.property(warps, (a) => {
      const counted = everyEnd(a);
      const looked = counted.map((_, index) => colourOfEnd({ sequence: a, end: index + 1 }));
      expect(looked).toEqual(counted);
    }),
    { numRuns: 1000 },
  );
});

const napkin = sequence([
  { colour: "ash", ends: 12 },
  { colour: "coal", ends: 4 },
  { colour: "ash", ends: 8 },
]);

test("a miscount shows at the last end of a stripe", () => {
  expect(edges(napkin)).toEqual([12, 16, 24]);
  expect(edges(noEnds)).toEqual([]);
});
test("a cut in the middle of a stripe leaves part of it on each side", () => {
  expect(slice({ sequence: napkin, after: 10, upTo: 18 }).runs).toEqual([
    { colour: "ash", ends: 2 },
    { colour: "coal", ends: 4 },
    { colour: "ash", ends: 2 },
  ]);
  expect(slice({ sequence: napkin, after: 2, upTo: 5 }).runs).toEqual([{ colour: "ash", ends: 3 }]);
});
test("a single stripe pivots onto itself", () => {
  const plain = sequence([{ colour: "ash", ends: 7 }]);
  expect(pivot(plain).runs).toEqual(plain.runs);
});
test("the written form follows through joining, repeating and turning", () => {
  const group = sequence([
    { colour: "light", ends: 6 },
    { colour: "dark", ends: 6 },
  ]);
  const warp = join([repeat({ sequence: group, times: 2 }), sequence([{ colour: "dark", ends: 8 }])]);
  expect(warp.runs).toHaveLength(4);
  expect(reverse(warp).written.map(({ ends }) => ends)).toEqual([8, 6, 6, 6, 6]);
});

const copied = structuredClone(napkin);
const handMade = Object.freeze({ runs: napkin.runs, starts: napkin.starts, ends: 99, written: napkin.written });
const heir = Object.freeze(Object.create(napkin)) as Sequence<string>;
test.each([
  ["a copy", copied],
  ["one made by hand", handMade],
  ["one with a changed total", Object.freeze({ ...napkin, ends: 25 })],
  ["an object that inherits from one", heir],
  ["the list of its stripes", napkin.runs],
])("%s is not a sequence", (_, given) => {
  const sequenceGiven = given as never;
  for (const call of [
    () => reverse(sequenceGiven),
    () => mirror(sequenceGiven),
    () => pivot(sequenceGiven),
    () => edges(sequenceGiven),
    () => everyEnd(sequenceGiven),
    () => endsPerColour(sequenceGiven),
    () => join([napkin, sequenceGiven]),
    () => repeat({ sequence: sequenceGiven, times: 2 }),
    () => slice({ sequence: sequenceGiven, after: 0, upTo: 1 }),
    () => rotate({ sequence: sequenceGiven, by: 1 }),
    () => multiply({ sequence: sequenceGiven, by: 2 }),
    () => recolour({ sequence: sequenceGiven, colours: new Map() }),
    () => colourOfEnd({ sequence: sequenceGiven, end: 1 }),
  ]) {
    expect(refusalOf(call).code).toBe("wrong-kind");
  }
});

test.each<[string, () => unknown, string, string]>([
  ["repeating one and a half times", () => repeat({ sequence: napkin, times: 1.5 }), "not-whole", "times"],
  ["repeating without a number", () => repeat({ sequence: napkin } as never), "missing", "times"],
  [
    "repeating with a field too many",
    () => repeat({ sequence: napkin, times: 1, gap: 2 } as never),
    "unknown-field",
    "gap",
  ],
  ["repeating past every loom", () => repeat({ sequence: napkin, times: 1e9 }), "too-long", ""],
  ["no input at all", () => repeat(undefined as never), "missing", ""],
  ["a list for an input", () => repeat([] as never), "wrong-kind", ""],
  ["cutting past the last end", () => slice({ sequence: napkin, after: 0, upTo: 25 }), "out-of-range", "upTo"],
  ["cutting backwards", () => slice({ sequence: napkin, after: 9, upTo: 8 }), "out-of-range", "after"],
  ["cutting before the first end", () => slice({ sequence: napkin, after: -1, upTo: 8 }), "out-of-range", "after"],
  ["moving ends backwards", () => rotate({ sequence: napkin, by: -1 }), "out-of-range", "by"],
  ["moving no ends of none", () => rotate({ sequence: noEnds, by: 1 }), "empty", "sequence"],
  ["multiplying by nothing", () => multiply({ sequence: napkin, by: 0 }), "out-of-range", "by"],
  ["end nought", () => colourOfEnd({ sequence: napkin, end: 0 }), "out-of-range", "end"],
  ["an end past the last", () => colourOfEnd({ sequence: napkin, end: 25 }), "out-of-range", "end"],
  ["an end of no ends", () => colourOfEnd({ sequence: noEnds, end: 1 }), "empty", "sequence"],
  [
    "colours in an object",
    () => recolour({ sequence: napkin, colours: { ash: "rye" } as never }),
    "wrong-kind",
    "colours",
  ],
  ["a colour left out", () => recolour({ sequence: napkin, colours: new Map([["ash", "rye"]]) }), "missing", "colours"],
  ["mirroring no ends", () => mirror(noEnds), "empty", "sequence"],
  ["pivoting no ends", () => pivot(noEnds), "empty", "sequence"],
  ["joining nothing", () => join([]), "empty", "sequences"],
  ["counting no ends", () => sequenceFromEnds([]), "empty", "colours"],
  ["an end without a colour", () => sequenceFromEnds(["ash", undefined]), "missing", "colours[1]"],
])("%s is refused", (_, call, code, where) => {
  expect(refusalOf(call)).toMatchObject({ code, path: pathOf(where) });
});
