import { inches, percentLost, picksPerInch, picksInLength, wovenLength } from "@thrum/maths";
import fc from "fast-check";
import { expect, test } from "vitest";
import type { Runs } from "../job/runs.js";
import type { Shots } from "../job/weft.js";
import { laidShots, picksLeftOver, shotsFromTo } from "./laid-shots.js";
import type { LaidShots } from "./laid-shots.js";
import { picksOfYarn } from "./weft-of-yarn.js";

const loss = percentLost(12);
const picks = picksPerInch(8);
const woven = wovenLength({ finishedLength: inches(60), hemEachEnd: inches(0), loomToFinished: loss });
const picksInAll = picksInLength({ wovenLength: woven, picks });
const of = (length: number, yarn: string): Shots => ({ length: inches(length), yarns: [yarn] });
const given = (runs: Runs<Shots>) => ({ runs, woven, picks, picksInAll, lengths: "finished" as const, loss });
const text = (stripes: readonly LaidShots[]) =>
  stripes.map((one) => `${String(one.picks)} ${one.yarns.join("/")}`).join(", ");

test("a blanket of 546 picks: 36 of slate, 9 of each border, 402 of oat", () => {
  const stripes = laidShots(
    given([
      {
        mirror: [
          of(4, "slate"),
          { repeat: 2, of: [of(1, "cream"), of(1, "slate")] },
          { picks: "the rest", yarns: ["oat"] },
        ],
        middle: "once",
      },
    ]),
  );
  expect(picksInAll).toBe(546);
  const border = "36 slate, 9 cream, 9 slate, 9 cream, 9 slate";
  expect(text(stripes)).toBe(`${border}, 402 oat, ${border.split(", ").reverse().join(", ")}`);
  // Slate: 108 picks; oat: 546 − 144.
  expect(["slate", "cream", "oat"].map((yarn) => picksOfYarn({ laid: stripes, yarn }))).toEqual([108, 36, 402]);
  expect(shotsFromTo(stripes)[5]).toMatchObject({ firstPick: 73, lastPick: 474 });
  expect(picksLeftOver(stripes, picksInAll)).toBe(0);
});

test("stripes shorter than the piece leave picks over, longer ones are refused, and lengths wait for where they are measured", () => {
  expect(picksLeftOver(laidShots(given([of(4, "slate")])), 546)).toBe(510);
  expect(() => laidShots(given([of(61, "slate")]))).toThrow("at most 546 picks");
  expect(() => laidShots({ ...given([of(4, "slate")]), lengths: null })).toThrow("weft.lengths");
  expect(laidShots({ ...given([{ picks: 9, yarns: ["slate"] }]), lengths: null })).toMatchObject([{ picks: 9 }]);
});

test("a heading with picks of its own comes off the piece first", () => {
  const heading: Shots = { length: inches(3), yarns: ["black"], at: picksPerInch(6) };
  const rest: Shots = { picks: "the rest", yarns: ["oat"] };
  const atLoom = { ...given([heading, rest, heading]), lengths: "at the loom" as const };
  // 60 ÷ 0.88 − 6 = 62.18 in, at 8 to the inch 497.45: 498 picks.
  expect(text(laidShots(atLoom))).toBe("18 black, 498 oat, 18 black");
  const counted: Shots = { picks: 18, yarns: ["black"], at: picksPerInch(6) };
  expect(text(laidShots({ ...atLoom, runs: [counted, rest, counted] }))).toBe("18 black, 498 oat, 18 black");
  expect(text(laidShots({ ...atLoom, runs: [{ mirror: [heading, rest], middle: "once" }] }))).toBe(
    "18 black, 498 oat, 18 black",
  );
  expect(() => laidShots({ ...atLoom, runs: [{ repeat: "the rest", of: [heading] }] })).toThrow("picks of its own");
});

test("shots in turn begin anew in every stripe, and come back as they went", () => {
  const inTurn = (number: number): Shots => ({ picks: number, yarns: ["n", "m"], order: "strictly in turn" });
  expect(text(laidShots(given([inTurn(7), inTurn(7)])))).toBe("7 n/m, 7 n/m");
  expect(text(laidShots(given([inTurn(8), inTurn(7)])))).toBe("15 n/m");
  const list = (stripes: readonly LaidShots[]): string =>
    stripes
      .map((one) => Array.from({ length: one.picks }, (_, at) => one.yarns[at % one.yarns.length]).join(""))
      .join("");
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 20 }),
      fc.integer({ min: 1, max: 20 }),
      fc.integer({ min: 1, max: 4 }),
      (one, other, hand) => {
        const yarns = ["n", "m", "o", "p"].slice(0, hand);
        const shots = (number: number): Shots => ({ picks: number, yarns, order: "strictly in turn" });
        const there: Runs<Shots> = [shots(one), { picks: 1, yarns: ["x"] }, shots(other)];
        const whole = list(laidShots(given([{ mirror: there, middle: "twice" }])));
        expect(Array.from(whole).reverse().join("")).toBe(whole);
        expect(whole.length).toBe(2 * (one + other + 1));
      },
    ),
  );
});
