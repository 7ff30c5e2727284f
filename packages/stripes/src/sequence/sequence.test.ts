import { law, stripes, upTo } from "#ci/law.js";
import fc from "fast-check";
import { expect, test } from "vitest";
import { attempt, StripeError } from "../refusal/stripe-error.js";
import { refusalOf } from "#ci/refusal-of.js";
import { endsPerColour } from "./ends-per-colour.js";
import { everyEnd } from "./every-end.js";
import { merge } from "./merge.js";
import { sequenceFromEnds } from "./sequence-from-ends.js";
import { sequence } from "./sequence.js";
import { slice } from "./slice.js";

law(2, "no stripe without ends, no neighbours of one colour, and merging twice changes nothing", [stripes], (list) => {
  const { runs } = sequence(list);
  for (const [index, run] of runs.entries()) {
    expect(run.ends).toBeGreaterThan(0);
    expect(run.colour).not.toBe(runs[index - 1]?.colour);
  }
  expect(merge(merge(list))).toEqual(merge(list));
});

law(6, "ends per colour sum to the length", [stripes], (list) => {
  const made = sequence(list);
  expect(endsPerColour(made).reduce((sum, { ends }) => sum + ends, 0)).toBe(made.ends);
});

test("neighbours of one colour are one stripe to the eye and stay two in the written form", () => {
  const made = sequence([
    { colour: "dark", ends: 6 },
    { colour: "dark", ends: 8 },
    { colour: "light", ends: 2 },
  ]);
  expect(made.runs).toEqual([
    { colour: "dark", ends: 14 },
    { colour: "light", ends: 2 },
  ]);
  expect(made.starts).toEqual([1, 15]);
  expect(made.ends).toBe(16);
  expect(made.written.map(({ ends }) => ends)).toEqual([6, 8, 2]);
});

test("a yarn can stand for a colour, and is known by being the same yarn", () => {
  const linen = { name: "linen", count: "16/2" };
  const copy = { ...linen };
  expect(
    sequence([
      { colour: linen, ends: 4 },
      { colour: linen, ends: 4 },
    ]).runs,
  ).toHaveLength(1);
  expect(
    sequence([
      { colour: linen, ends: 4 },
      { colour: copy, ends: 4 },
    ]).runs,
  ).toHaveLength(2);
  expect(
    sequence([
      { colour: NaN, ends: 4 },
      { colour: NaN, ends: 4 },
    ]).runs,
  ).toHaveLength(1);
});

test("a sequence cannot be changed, nor the list it was made from change it", () => {
  const list = [{ colour: "ash", ends: 4 }];
  const made = sequence(list);
  list[0] = { colour: "ash", ends: 9 };
  expect(made.ends).toBe(4);
  for (const part of [made, made.runs, made.starts, made.written, made.runs[0]])
    expect(Object.isFrozen(part)).toBe(true);
});

test("an error names the function, the place, what was expected and received, and what to do", () => {
  const error = refusalOf(() =>
    sequence([
      { colour: "ash", ends: 4 },
      { colour: "coal", ends: 2.5 },
    ]),
  );
  expect(error).toBeInstanceOf(StripeError);
  expect(error.message).toBe(
    "sequence({ stripes[1].ends }): expected a whole number of 1 or more, received 2.5. Give the count itself.",
  );
  expect(error).toMatchObject({ code: "not-whole", path: ["stripes", 1, "ends"], received: "2.5" });
});

test.each([
  ["no list at all", undefined, "missing", "stripes"],
  ["a word", "20 ash", "wrong-kind", "stripes"],
  ["an empty list", [], "empty", "stripes"],
  ["something else in the list", [4], "wrong-kind", "stripes[0]"],
  ["a stripe without a colour", [{ ends: 4 }], "missing", "stripes[0].colour"],
  ["a stripe without ends", [{ colour: "ash" }], "missing", "stripes[0].ends"],
  ["a stripe with a field too many", [{ colour: "ash", ends: 4, width: 2 }], "unknown-field", "stripes[0].width"],
  ["no ends", [{ colour: "ash", ends: 0 }], "out-of-range", "stripes[0].ends"],
  ["fewer than no ends", [{ colour: "ash", ends: -2 }], "out-of-range", "stripes[0].ends"],
  ["half an end", [{ colour: "ash", ends: 0.5 }], "not-whole", "stripes[0].ends"],
  ["a number that is none", [{ colour: "ash", ends: NaN }], "not-a-number", "stripes[0].ends"],
  ["endless ends", [{ colour: "ash", ends: Infinity }], "not-a-number", "stripes[0].ends"],
  ["a number written out", [{ colour: "ash", ends: "4" }], "wrong-kind", "stripes[0].ends"],
  ["more ends than any loom holds", [{ colour: "ash", ends: 5_000_001 }], "too-long", ""],
])("%s is refused", (_, given, code, place) => {
  const path = place.match(/[a-z]+|\d+/gu)?.map((part) => (/\d/u.test(part) ? Number(part) : part)) ?? [];
  expect(refusalOf(() => sequence(given as never))).toMatchObject({ code, path });
});

test("every fault of a stripe is told at once", () => {
  const error = refusalOf(() => sequence([{ ends: 1.5, shade: 2 }] as never));
  expect(error.faults.map(({ path }) => path.at(-1))).toEqual(["colour", "ends", "shade"]);
});

test("every faulty stripe is told at once, and the message of very many stays short", () => {
  const rows = [{ colour: "a", ends: 0 }, { colour: "b", ends: "3" }, { ends: 3 }, null, { colour: "c", ends: 2 }];
  const { faults } = refusalOf(() => sequence(rows as never));
  expect(faults.map(({ path, code }) => [...path.slice(1), code])).toEqual([
    [0, "ends", "out-of-range"],
    [1, "ends", "wrong-kind"],
    [2, "colour", "missing"],
    [3, "missing"],
  ]);
  const many = refusalOf(() => sequence(Array.from({ length: 10_000 }, () => ({ colour: "a", ends: 0 }))));
  expect(many.faults).toHaveLength(10_000);
  expect(many.message.split("\n")).toHaveLength(51);
});

test("what is refused comes back as data, and what is taken as the value", () => {
  const refused = attempt(sequence, [{ colour: "a", ends: 0 }]);
  expect(refused.ok ? null : refused.faults[0].params).toMatchObject({ atLeast: 1 });
  const made = attempt(sequence, [{ colour: "a", ends: 3 }]);
  expect(made.ok && made.value.ends).toBe(3);
  expect(() => attempt(() => JSON.parse("{") as unknown)).toThrow("in JSON at position 1");
});

test("every stripe of a sequence, made or cut out, starts one end after those before it", () => {
  fc.assert(
    fc.property(stripes, upTo(40), upTo(40), (list, one, other) => {
      const made = sequence(list);
      const [after, upToEnd] = [one, other].map((cut) => cut % (made.ends + 1)).sort((a, b) => a - b) as [
        number,
        number,
      ];
      for (const some of [made, slice({ sequence: made, after, upTo: upToEnd }), sequenceFromEnds(everyEnd(made))]) {
        let ends = 0;
        for (const [index, run] of some.runs.entries()) {
          expect(some.starts[index]).toBe(ends + 1);
          ends += run.ends;
        }
        expect(some.starts).toHaveLength(some.runs.length);
        expect(some.ends).toBe(ends);
      }
    }),
    { numRuns: 1000 },
  );
});

test("a colour that is not a number is itself and no other", () => {
  const colours = [Number.NaN, Number.NaN, 0, Number.NaN];
  expect(sequenceFromEnds<number>(colours).runs.map(({ ends }) => ends)).toEqual([2, 1, 1]);
});
