import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { QuantityError } from "../../engine/refusal.js";
import { brown1923, davis1920, gateTextile, islam } from "../../sources/index.js";
import {
  cottonCount,
  galashielsCut,
  grams,
  kilograms,
  percentAdded,
  percentLost,
  percentOf,
  tex,
  yorkshireSkein,
} from "../../units/index.js";
import { averageCount } from "./average-count.js";
import { averageDirectCount } from "./average-direct-count.js";
import { blendRegain } from "./blend-regain.js";
import { foldedCount } from "./folded-count.js";
import { invoiceMass } from "./invoice-mass.js";
import { regainFromContent } from "./regain-from-content.js";
import { singleForFolded } from "./single-for-folded.js";
import { waterInYarn } from "./water-in-yarn.js";

describe("averages, contraction and regain", () => {
  cited(
    "64s, 48s and 32s side by side",
    published(davis1920, "Ex. 30, p. 48", "44 4/13", "576/13"),
    averageCount,
    [{ counts: [cottonCount(64), cottonCount(48), cottonCount(32)] }],
    cottonCount,
  );
  cited(
    "35 and 21 skeins side by side",
    published(davis1920, "Ex. 33, p. 50", "26 1/4", "105/4"),
    averageCount,
    [{ counts: [yorkshireSkein(35), yorkshireSkein(21)] }],
    yorkshireSkein,
  );
  cited(
    "18 cut and 84 cut side by side",
    published(davis1920, "Ex. 34, p. 50", "29.6", "504/17"),
    averageCount,
    [{ counts: [galashielsCut(18), galashielsCut(84)] }],
    galashielsCut,
  );
  cited(
    "80s, 40s and 20s side by side",
    published(davis1920, "Ex. 35, p. 51", "34 2/7", "240/7"),
    averageCount,
    [{ counts: [cottonCount(80), cottonCount(40), cottonCount(20)] }],
    cottonCount,
  );
  cited(
    "14s, 12s and 80s side by side",
    published(davis1920, "Ex. 36, p. 51", "18.3", "5040/281", "misprint: three times the folded count rounded to 6.1"),
    averageCount,
    [{ counts: [cottonCount(14), cottonCount(12), cottonCount(80)] }],
    cottonCount,
  );
  cited(
    "equal masses of 30 and 20 tex",
    published(gateTextile, "2013, Q40", "24", "24"),
    averageDirectCount,
    [{ masses: [kilograms(1200), kilograms(1200)], counts: [tex(30), tex(20)] }],
    tex,
  );
  cited(
    "the single for a two-fold 16s with 10 % taken up",
    published(
      gateTextile,
      "1992, Q3",
      "35.2",
      "320/9",
      "the key adds 10 % of the folded length; here it is of the single",
    ),
    singleForFolded,
    [{ folded: cottonCount(16), plies: 2, contraction: percentLost(10) }],
    cottonCount,
  );
  cited(
    "two threads that weigh as much as four of 40/2",
    published(brown1923, "p. 31", "20/2", "10"),
    singleForFolded,
    [{ folded: cottonCount(5), plies: 2, contraction: percentLost(0) }],
    cottonCount,
  );
  cited(
    "polyester and cotton, 80 to 20",
    published(islam, "Problem 2", "2.02", "2.02"),
    blendRegain,
    [{ shares: [percentOf(80), percentOf(20)], regains: [percentAdded("0.4"), percentAdded("8.5")] }],
    percentAdded,
  );
  cited(
    "cotton and viscose, 60 to 40",
    published(islam, "Problem 1", "10.3", "10.3"),
    blendRegain,
    [{ shares: [percentOf(60), percentOf(40)], regains: [percentAdded("8.5"), percentAdded(13)] }],
    percentAdded,
  );
  cited(
    "polyester and cotton, 70 to 30",
    published(gateTextile, "2022, Q23", "2.83", "2.83"),
    blendRegain,
    [{ shares: [percentOf(70), percentOf(30)], regains: [percentAdded("0.4"), percentAdded("8.5")] }],
    percentAdded,
  );
  cited(
    "linen, cotton and polyester by dry mass",
    published(gateTextile, "2006, Q68, working", "7.43", "7.43"),
    blendRegain,
    [
      {
        shares: [percentOf(30), percentOf(50), percentOf(20)],
        regains: [percentAdded(12), percentAdded("7.5"), percentAdded("0.4")],
      },
    ],
    percentAdded,
  );
  cited(
    "20 tonnes at 4 % of water",
    published(islam, "Problem 2", "19587.84", "19587.84"),
    invoiceMass,
    [{ mass: kilograms(20000), content: percentLost(4), regain: percentAdded("2.02") }],
    kilograms,
  );
  cited(
    "100 kg of polyester and cotton at 4 % of water",
    published(
      gateTextile,
      "2010, Q38",
      "99.10",
      "309219/3125",
      "misprint: divides by 1.04 where 4 % is of the mass as it is",
    ),
    invoiceMass,
    [{ mass: kilograms(100), content: percentLost(4), regain: percentAdded("3.073") }],
    kilograms,
  );
  cited(
    "water in 100 g of wool, silk and viscose",
    published(gateTextile, "2007, Q70", "12.28", "700/57"),
    waterInYarn,
    [{ mass: grams(100), regain: percentAdded(14) }],
    grams,
  );

  cited(
    "the water in 100 g of wool, silk and viscose, back into their regain",
    published(gateTextile, "2007, Q70", "12.28 g in 100 g", "14"),
    regainFromContent,
    [{ content: percentLost("12.28070175438596491228070175438596491") }],
    percentAdded,
  );
  cited(
    "wool, silk and viscose, half and two quarters",
    published(gateTextile, "2007, Q70", "12.28 g in 100 g", "14"),
    blendRegain,
    [
      {
        shares: [percentOf(50), percentOf(25), percentOf(25)],
        regains: [percentAdded(17), percentAdded(11), percentAdded(11)],
      },
    ],
    percentAdded,
  );

  it("an average lies between its counts, and above what they fold to", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 300 }), { minLength: 2, maxLength: 6 }), (numbers) => {
        const counts = numbers.map((n) => cottonCount(n));
        const average = averageCount({ counts }).in(cottonCount);
        expect(average).toBeGreaterThanOrEqual(Math.min(...numbers) - 1e-9);
        expect(average).toBeLessThanOrEqual(Math.max(...numbers) + 1e-9);
        expect(average).toBeCloseTo(numbers.length * foldedCount({ counts }).in(cottonCount), 8);
      }),
    );
  });

  it("a regain and the content it comes from are the same water", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 60 }), (content) => {
        const regain = regainFromContent({ content: percentLost(content) });
        expect(waterInYarn({ mass: grams(100), regain }).in(grams)).toBeCloseTo(content, 9);
        const same = invoiceMass({ mass: grams(100), content: percentLost(content), regain });
        expect(same.in(grams)).toBeCloseTo(100, 9);
      }),
    );
  });

  it("nothing is taken up, nothing is wet: the sums leave things as they are", () => {
    const none = { folded: cottonCount(16), plies: 2, contraction: percentLost(0) };
    expect(singleForFolded(none).value).toBe("32");
    expect(waterInYarn({ mass: grams(100), regain: percentAdded(0) }).value).toBe("0");
  });

  it("a loss is refused where a regain is wanted, and a share of nothing", () => {
    expect(() => waterInYarn({ mass: grams(1), regain: percentLost(3) as never })).toThrow(QuantityError);
    const input = { shares: [percentOf(0)], regains: [percentAdded(3)] };
    expect(() => blendRegain(input)).toThrow(QuantityError);
  });

  it("a faulty share is refused once, and its list is not called too short for it", () => {
    const shares = [percentOf(120), percentOf(40)];
    try {
      blendRegain({ shares, regains: [percentAdded(8), percentAdded(13)] });
      expect.unreachable();
    } catch (error) {
      expect((error as QuantityError).faults.map(({ path }) => path)).toEqual([["shares", 0]]);
    }
  });
});
