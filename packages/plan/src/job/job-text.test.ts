import {
  centimetres,
  cottonCount,
  currency,
  dentsPerInch,
  dentsPerTenCentimetres,
  denier,
  endsPerCentimetre,
  endsPerInch,
  grams,
  inches,
  inUnit,
  metres,
  metricCount,
  millimetres,
  ounces,
  percentAdded,
  percentLost,
  percentOf,
  picksPerCentimetre,
  picksPerInch,
  pounds,
  spunSilkCount,
  tex,
  times,
  worstedCount,
  yards,
} from "@thrum/maths";
import type { Length, Mass } from "@thrum/maths";
import fc from "fast-check";
import { FAILSAFE_SCHEMA, load } from "js-yaml";
import { describe, expect, it } from "vitest";
import { jobIn } from "#ci/example-jobs.js";
import { faultsText } from "./fault.js";
import { jobTextWith } from "./job-text-with.js";
import { jobText } from "./job-text.js";
import type { Job } from "./job.js";
import { newJob } from "./new-job.js";
import { checkedJob } from "./checked-job.js";
import { scalar } from "./yaml-lines.js";

/** Some of the keys, in any mixture. */
function some<T extends object>(keys: { readonly [K in keyof T]-?: fc.Arbitrary<T[K]> }): fc.Arbitrary<T> {
  return fc.record(keys, { requiredKeys: [] }) as unknown as fc.Arbitrary<T>;
}

const amount = fc.oneof(
  fc.integer({ min: 1, max: 900 }).map(String),
  fc.integer({ min: 1, max: 9000 }).map((n) => String(n / 100)),
  fc.integer({ min: 1, max: 900 }).map((n) => String(n / 32)),
);
const third = fc.integer({ min: 1, max: 40 }).map((n) => times(yards(n), "0.1"));
const length: fc.Arbitrary<Length> = fc.oneof(
  fc.tuple(fc.constantFrom(inches, centimetres, metres, millimetres, yards), amount).map(([unit, n]) => unit(n)),
  fc.integer({ min: 1, max: 100 }).map((n) => inUnit(inches(n), yards)),
  third,
);
const mass: fc.Arbitrary<Mass> = fc.tuple(fc.constantFrom(ounces, pounds, grams), amount).map(([unit, n]) => unit(n));
const ends = fc.integer({ min: 1, max: 9 });
const NAMES = [
  "natural",
  "madder",
  "indigo",
  "null",
  "no",
  "café",
  "sea-green",
  "the blue",
  "plum & pear",
  "Ω",
  "-x",
  "!y",
  "#z",
];
const name = fc.constantFrom(...NAMES.filter((one) => !one.startsWith("#")));
const picks = fc.tuple(fc.constantFrom(picksPerInch, picksPerCentimetre), amount).map(([unit, n]) => unit(n));
const words = fc.oneof(
  fc.constantFrom("1.10", "~", "yes", "a: b", "a #b", "[x", "2026-11-30", "end:", "'q", "12:30", "0x1F", "- a", "..."),
  fc.string({ unit: "grapheme", minLength: 1, maxLength: 30 }).filter((text) => !/\p{Cs}/u.test(text)),
);
const title = words.map((text) => text.trim().replace(/\s+/gu, " ")).filter((text) => text.length < 200);

const hand = fc
  .tuple(fc.array(name, { minLength: 1, maxLength: 3 }), fc.boolean())
  .map(([yarns, inTurn]) => (inTurn && yarns.length > 1 ? { yarns, order: "strictly in turn" as const } : { yarns }));
const stripe = fc.tuple(ends, hand).map(([n, one]) => ({ ends: n * one.yarns.length, ...one }));

function runsOf<Run>(run: fc.Arbitrary<Run>, open: readonly unknown[] = []): fc.Arbitrary<readonly never[]> {
  const level = (deep: number): fc.Arbitrary<readonly unknown[]> => {
    const inner = deep === 0 ? run : fc.oneof({ weight: 3, arbitrary: run }, ...groups(deep - 1));
    return fc.array(inner, { minLength: 1, maxLength: 4 });
  };
  const groups = (deep: number): readonly fc.Arbitrary<unknown>[] => [
    fc.record({ repeat: fc.integer({ min: 1, max: 4 }), of: level(deep) }),
    fc.record({ mirror: level(deep), middle: fc.constantFrom("once", "twice") }),
  ];
  const rest = fc.constantFrom([], ...open.map((one) => [one]));
  return fc.tuple(level(2), rest).map(([list, more]) => [...list, ...more]) as unknown as fc.Arbitrary<
    readonly never[]
  >;
}

const stripes = runsOf(stripe, [
  { ends: "the rest", yarns: ["natural"] },
  { repeat: "the rest", of: [{ ends: 3, yarns: ["madder"] }] },
]);
const threaded = fc.oneof(
  fc.integer({ min: 1, max: 8 }),
  fc.record({ ends: ends, shaft: ends }),
  fc.constant("floating"),
);
const sleyed = fc.oneof(
  ends,
  fc.record({ dents: fc.integer({ min: 1, max: 9 }), at: fc.integer({ min: 1, max: 9 }) }),
  fc.record({ ends, at: ends }),
  fc.record({ empty: ends }),
);
const shots = fc.oneof(
  fc.tuple(ends, hand).map(([n, one]) => ({ picks: n, ...one })),
  fc.tuple(length, hand).map(([measured, one]) => ({ length: measured, ...one })),
  fc.tuple(length, hand, picks).map(([measured, one, at]) => ({ length: measured, at, ...one })),
);
const weft = fc.oneof(
  hand.map((one) => ({ stripes: [one] })),
  some({
    stripes: runsOf(shots, [{ picks: "the rest", yarns: ["natural"] }]),
    lengths: fc.constantFrom("finished", "at the loom"),
    allowance: amount.map((n) => percentAdded(n)),
    eachStripe: length,
  }),
);
const loss = fc.oneof(
  fc.integer({ min: 0, max: 990 }).map((n) => ({ lost: percentLost(String(n / 10)) })),
  fc
    .tuple(length, fc.integer({ min: 1, max: 8 }))
    .map(([before, n]) => ({ before, after: times(before, `0.${String(n)}`) })),
);
const plies = fc.array(fc.integer({ min: 1, max: 6 }), { maxLength: 2 });
const system = fc.constantFrom(cottonCount, worstedCount, metricCount, spunSilkCount, tex, denier);
const count = fc.oneof(
  fc.tuple(length, mass).map(([long, heavy]) => ({ label: { length: long, mass: heavy } })),
  fc.tuple(system, amount, plies).map(([unit, n, folds]) => ({ number: { count: unit(n), plies: folds } })),
);
const money = amount.map((n) => currency("EUR")(n));
const sold = fc.oneof(
  mass.map((one) => ({ mass: one })),
  fc.tuple(length, money).map(([one, price]) => ({ length: one, price })),
);
const yarn = some({
  count,
  sold: fc.array(sold, { minLength: 1, maxLength: 3 }),
  onHand: fc.array(
    fc.oneof(
      mass.map((one) => ({ mass: one })),
      length.map((one) => ({ length: one })),
    ),
    { maxLength: 3 },
  ),
  fibre: fc.constantFrom(
    [{ fibre: "wool" }],
    [
      { fibre: "silk", share: percentOf("66.5") },
      { fibre: "lamb's wool", share: percentOf("33.5") },
    ],
  ),
  seen: fc.constant("#8e3b32"),
});
const everyYarn = fc.tuple(
  ...NAMES.filter((one) => !one.startsWith("#")).map((one) => yarn.map((value) => [one, value] as const)),
);
const heddles = fc.oneof(ends, fc.array(ends, { minLength: 1, maxLength: 4 }));
const room = some({ dents: fc.nat(40), heddles });
const filled = <T extends object>(one: fc.Arbitrary<T>): fc.Arbitrary<T> =>
  one.filter((value) => Object.keys(value).length > 0);
const loom = some({
  reed: fc.tuple(fc.constantFrom(dentsPerInch, dentsPerTenCentimetres), amount).map(([unit, n]) => unit(n)),
  sley: fc.oneof(
    runsOf(sleyed).map((places) => ({ places })),
    fc.constant({ byYarn: { natural: 2, others: 2 } }),
  ),
  threading: runsOf(threaded),
  room: filled(some({ before: filled(room), after: filled(room) })),
  gapInDent: fc.oneof(fc.constant("not measured"), length),
  heddleEye: fc.record({ wide: length, high: length, of: fc.constantFrom("metal", "cord") }),
  endOneOn: fc.constantFrom("left", "right"),
});
const warpFault = fc.oneof(
  fc.record(
    { after: fc.nat(400), is: fc.constant("broken"), ends, mend: fc.boolean() },
    { requiredKeys: ["after", "is"] },
  ),
  fc.record({ after: fc.nat(400), is: fc.constant("left out"), mend: fc.boolean() }, { requiredKeys: ["after", "is"] }),
);
const oldWarp = fc.oneof(
  fc.constant({ none: true }),
  filled(
    some({
      ends: fc.constant(400),
      yarn: fc.array(count, { minLength: 1, maxLength: 2 }),
      stripes,
      faults: fc.array(warpFault, { minLength: 1, maxLength: 3 }),
      left: filled(some({ pastReed: length, behindHeddles: length })),
    }),
  ),
);
const side = fc.integer({ min: -9, max: 9 });
const join = some({
  knots: fc.constantFrom("in front of the reed", "behind the heddles"),
  knot: fc.constantFrom("weaver's", "overhand of one end"),
  sides: fc.oneof(
    fc.constant({ where: "both" }),
    fc.record({ before: side, after: side }).map((numbers) => ({ numbers })),
  ),
  order: fc.constantFrom("from end 1", "one colour at a time"),
  perHour: fc.integer({ min: 1, max: 4000 }).map((n) => n / 8),
});
const cloth = some({
  sett: fc.tuple(fc.constantFrom(endsPerInch, endsPerCentimetre), amount).map(([unit, n]) => unit(n)),
  threading: runsOf(threaded),
  picks,
  takeUp: loss,
  widthReedToFinished: loss,
});
const piece = filled(
  some({
    number: fc.oneof(ends),
    name: title.filter((text) => text.length < 60),
    finishedLength: length,
    fringeTwist: loss,
    weft: filled(weft),
    picks,
  }),
);
const job = some({
  thrum: fc.constant(1),
  title,
  note: words,
  stripes,
  groups: ends,
  yarns: everyYarn.map((entries) => Object.fromEntries(entries)),
  loom: filled(loom),
  oldWarp,
  join: filled(join),
  cloth: filled(cloth),
  warp: filled(some({ length, wasteInFront: length })),
  pieces: fc.array(piece, { minLength: 1, maxLength: 3 }),
  betweenPieces: fc.oneof(
    length.map((one) => ({ length: one })),
    fc.tuple(ends, hand).map(([n, one]) => ({ picks: n, weft: one })),
  ),
  weft: filled(weft),
  winding: filled(
    some({
      threads: fc.integer({ min: 1, max: 9 }),
      chains: fc.oneof(
        fc.constantFrom("by stripe", "by colour"),
        ends.map((every) => ({ every })),
      ),
      most: fc.oneof(
        ends.map((n) => ({ ends: n })),
        mass.map((one) => ({ mass: one })),
      ),
      extra: fc.array(fc.record({ ends, yarn: name }), { minLength: 1, maxLength: 2 }),
    }),
  ),
  found: filled(some({ takeUp: fc.record({ before: length, after: length }), warpLeft: length, knotsPerHour: ends })),
  costs: filled(some({ hours: ends, hourlyRate: money, commission: fc.nat(99).map((n) => percentLost(n)) })),
  label: fc.constant({ regain: { wool: percentAdded("8.5"), "lamb's wool": percentAdded(17) } }),
}) as unknown as fc.Arbitrary<Job>;

describe("a job as text", () => {
  it("is read as the same job, whatever the job", () => {
    fc.assert(
      fc.property(job, (one) => {
        const checked = checkedJob(one);
        if (!checked.ok) throw new Error(faultsText(checked.faults));
        const text = jobText(checked.value);
        expect(jobIn(text)).toEqual(checked.value);
        expect(jobText(jobIn(text))).toBe(text);
      }),
    );
  });

  it("changed value by value it is read as the job it was changed to, whatever stood there", () => {
    const checked = (one: Job): Job => {
      const reading = checkedJob(one);
      if (!reading.ok) throw new Error(faultsText(reading.faults));
      return reading.value;
    };
    fc.assert(
      fc.property(job, fc.option(job), (one, other) => {
        const [there, wanted] = [other === null ? newJob() : jobText(checked(other)), checked(one)];
        expect(jobIn(jobTextWith(there, wanted))).toEqual(wanted);
        // One key of another job in the midst of this one.
        const mixed = checkedJob({ ...jobIn(there), ...wanted });
        if (mixed.ok) expect(jobIn(jobTextWith(there, mixed.value))).toEqual(mixed.value);
      }),
    );
  });

  it("holds the same texts for another reader of YAML", () => {
    fc.assert(
      fc.property(words, (text) => {
        const expected = { key: text, list: [text], group: { [text]: text } };
        const written = `key: ${scalar(text)}\nlist: [${scalar(text)}]\ngroup: { ${scalar(text)}: ${scalar(text)} }\n`;
        expect(load(written)).toEqual(expected);
        expect(load(written, { schema: FAILSAFE_SCHEMA })).toEqual(expected);
      }),
    );
  });
});
