// Each reader of text against a committed corpus, changed a few times over: read, or refused by one of our own errors, at once.
// THRUM_FUZZ=100000 npx vitest run --config .ci/vitest.config.ts whole/fuzz : as many changed texts for each corpus.
import { readFileSync } from "node:fs";
import * as maths from "@thrum/maths";
import { sequence, sequenceFromList, settFromThreadCount } from "@thrum/stripes";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Unwritten } from "../../docs/.vitepress/theme/stripes/marks.js";
import { orderIn, runsOf } from "../../docs/.vitepress/theme/stripes/order-as.js";
import { readOrder } from "../../docs/.vitepress/theme/stripes/read-order.js";
import { root } from "../support/built.mjs";
import { leastTime } from "../support/processor-time.js";

const SEED = 22;
const RUNS = Number(process.env["THRUM_FUZZ"] ?? 1000);
const { cottonCount, inches, ounces, pounds, yards, yarnMass } = maths;
const legend = { a: "ash", k: "coal" };
const wound = { length: yards(840), count: cottonCount(1) };

type Reader = (text: string) => unknown;
const readers: Readonly<Record<string, readonly Reader[]>> = {
  amounts: [
    (text) => maths.lengthFrom(text, [inches, yards]),
    (text) => maths.lengthFrom(text, [inches], { locale: "de" }),
    (text) => maths.massFrom(text, [ounces, pounds]),
    (text) => yards(text),
  ],
  counts: [
    (text) => maths.countSystemFrom(text),
    (text) => maths.yarnFrom(text, { order: "plies first", system: cottonCount, counted: "single" }),
  ],
  sleys: [(text) => maths.sleyFrom(text)],
  stripes: [
    (text) => sequenceFromList({ text, legend }),
    (text) => settFromThreadCount({ text, legend: { K: 1, A: 2 }, pivots: "full count" }),
  ],
  claims: [
    (text) => maths.check(yarnMass, wound, { written: text, unit: pounds }),
    (text) => maths.firstWrongLine(yarnMass, wound, { mass: text }),
  ],
  links: [
    (link) => {
      try {
        return sequence(runsOf(readOrder(orderIn(link) ?? "1 a").list));
      } catch (error) {
        if (error instanceof Unwritten) return null;
        throw error;
      }
    },
  ],
};

const piece = fc.constantFrom(
  ..."0 1 9 . , ; / [ ] ( ) = - + % ½ ' \" e x × \n \t \0 \u00a0 \u200b \u202e \ud800 😀 ١ in ft yd __proto__ times".split(
    " ",
  ),
  " ",
);
interface Change {
  readonly at: number;
  readonly drop: number;
  readonly add: string;
}
const change: fc.Arbitrary<Change> = fc.record({
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  drop: fc.integer({ min: 0, max: 3 }),
  add: fc.oneof(
    piece,
    fc.tuple(piece, fc.integer({ min: 1, max: 300 })).map(([one, many]) => one.repeat(many)),
  ),
});

function changed(text: string, changes: readonly Change[]): string {
  return changes.reduce((now, { at, drop, add }) => {
    const place = Math.floor(at * now.length);
    return now.slice(0, place) + add + now.slice(place + drop);
  }, text);
}

/** What a reader says where it refuses, by an error of ours; nothing where it reads. */
function refusalOf(read: Reader, text: string): string {
  try {
    read(text);
    return "";
  } catch (error) {
    if (!(error instanceof Error) || !["QuantityError", "StripeError"].includes(error.name)) throw error;
    return error.message;
  }
}

/** Reads, or is refused in few words without a control character. */
function tried(read: Reader, text: string): void {
  const said = refusalOf(read, text);
  expect(said).not.toMatch(/(?!\n)\p{Cc}/u);
  expect(said.length).toBeLessThan(2500);
}

describe.each(Object.entries(readers))("readers of %s", (name, all) => {
  const corpus = JSON.parse(readFileSync(`${root}.ci/whole/fuzz/${name}.json`, "utf8")) as readonly string[];

  it(`read or refuse the corpus, and ${String(RUNS)} changed texts of seed ${String(SEED)}`, () => {
    for (const text of corpus) for (const read of all) tried(read, text);
    const texts = fc.tuple(fc.constantFrom(...corpus), fc.array(change, { minLength: 1, maxLength: 4 }));
    fc.assert(
      fc.property(texts, ([text, changes]) => {
        for (const read of all) tried(read, changed(text, changes));
      }),
      { seed: SEED, numRuns: RUNS },
    );
  }, 600_000);

  it("take no longer than ten times as long for ten times the text, up to 99 kB", () => {
    for (const text of corpus) {
      for (const read of all) {
        const [short = 0, long = 0] = [9_900, 99_000].map((size) => {
          const repeated = text.repeat(Math.ceil(size / Math.max(1, text.length))).slice(0, size);
          return leastTime(() => refusalOf(read, repeated), 2);
        });
        expect(long).toBeLessThan(12 * short + 100);
      }
    }
  });
});
