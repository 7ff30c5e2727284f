import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { QuantityError } from "../../engine/refusal.js";
import { heavierOrLighter2026, silkWool2016, taylor1909 } from "../../sources/index.js";
import { cottonCount, endsPerInch, grams, picksPerInch, pounds, yardsPerPound } from "../../units/index.js";
import { countForSett } from "./count-for-sett.js";
import { countForWeightAndWeave } from "./count-for-weight-and-weave.js";
import { countForWeight } from "./count-for-weight.js";
import { picksForCount } from "./picks-for-count.js";
import { settForCountAndWeave } from "./sett-for-count-and-weave.js";
import { settForCount } from "./sett-for-count.js";
import { settForEqualMass } from "./sett-for-equal-mass.js";
import { settForWeave } from "./sett-for-weave.js";
import { settForWeight } from "./sett-for-weight.js";

const plain = { ends: 2, intersections: 2 };
const toTwill = { ends: 4, intersections: 4, newEnds: 4, newIntersections: 2 };
const twillToTwill = { ends: 4, intersections: 2, newEnds: 10, newIntersections: 4 };

describe("another count in the same cloth", () => {
  cited(
    "plain cloth of 32s in 16s",
    published(taylor1909, "p. 337, ch. XII", "55", "55.15432893255070690326586024417822506422"),
    settForCount,
    [{ sett: endsPerInch(78), count: cottonCount(32), newCount: cottonCount(16) }],
    endsPerInch,
  );
  cited(
    "plain cloth of 32s in 60s",
    published(taylor1909, "pp. 341 and 342, ch. XII", "106.8", "106.8058987135073921241091076461564161208"),
    settForCount,
    [{ sett: endsPerInch(78), count: cottonCount(32), newCount: cottonCount(60) }],
    endsPerInch,
  );
  cited(
    "91 picks of 44s in 60s",
    published(
      taylor1909,
      "pp. 342 and 343, ch. XII",
      "106 1/2",
      "106.2651058780478855300579783150213252883",
      "the root of 11,292.3 is put up to the half",
    ),
    picksForCount,
    [{ picks: picksPerInch(91), count: cottonCount(44), newCount: cottonCount(60) }],
    picksPerInch,
  );
  cited(
    "the count for 55 to the inch, from 78 of 32s",
    published(taylor1909, "p. 341, ch. XII", "15.91", "24200/1521"),
    countForSett,
    [{ count: cottonCount(32), sett: endsPerInch(78), newSett: endsPerInch(55) }],
    cottonCount,
  );
  cited(
    "silk for noil, as heavy in the warp",
    published(
      silkWool2016,
      "whole entry",
      "24.8",
      "1170/47",
      "cut off, not rounded; the aim is equal mass, where equal firmness would give 29.94",
    ),
    settForEqualMass,
    [{ sett: endsPerInch(36), count: yardsPerPound("4263.768278"), newCount: yardsPerPound("2948.350405") }],
    endsPerInch,
  );

  it("is as firm again when it is changed back", () => {
    const counts = fc.integer({ min: 1, max: 200 });
    fc.assert(
      fc.property(counts, counts, counts, (sett, from, to) => {
        const [count, newCount] = [cottonCount(from), cottonCount(to)];
        const there = settForCount({ sett: endsPerInch(sett), count, newCount });
        const back = settForCount({ sett: there, count: newCount, newCount: count });
        expect(back.in(endsPerInch)).toBeCloseTo(sett, 9);
        const found = countForSett({ count, sett: endsPerInch(sett), newSett: there });
        expect(found.in(cottonCount)).toBeCloseTo(to, 9);
      }),
    );
  });
});

describe("another weave in the same yarn", () => {
  cited(
    "plain cloth of 103 as a 2/2 twill",
    published(taylor1909, "p. 464 of the copy", "137 1/3", "412/3"),
    settForWeave,
    [{ sett: endsPerInch(103), ...toTwill }],
    endsPerInch,
  );
  cited(
    "a 2/2 twill of 137 as a 5/2/1/2 twill",
    published(taylor1909, "p. 339, ch. XII", "146.8", "2055/14"),
    settForWeave,
    [{ sett: endsPerInch(137), ...twillToTwill }],
    endsPerInch,
  );
  cited(
    "the weave alone, by the two rules together",
    published(taylor1909, "p. 339, ch. XII", "146.8", "2055/14"),
    settForCountAndWeave,
    [{ sett: endsPerInch(137), count: cottonCount(24), newCount: cottonCount(24), ...twillToTwill }],
    endsPerInch,
  );
  cited(
    "the count alone, by the two rules together",
    published(taylor1909, "pp. 341 and 342, ch. XII", "106.8", "106.8058987135073921241091076461564161208"),
    settForCountAndWeave,
    [
      {
        sett: endsPerInch(78),
        count: cottonCount(32),
        newCount: cottonCount(60),
        ...plain,
        newEnds: 2,
        newIntersections: 2,
      },
    ],
    endsPerInch,
  );

  it("is told over any number of repeats", () => {
    const sett = endsPerInch(103);
    const once = settForWeave({ sett, ...plain, newEnds: 4, newIntersections: 2 });
    expect(settForWeave({ sett, ...toTwill }).in(endsPerInch)).toBeCloseTo(once.in(endsPerInch), 12);
  });
});

describe("another weight", () => {
  cited(
    "20s for a cloth a sixth heavier",
    published(heavierOrLighter2026, "whole article", "14.69", "720/49"),
    countForWeight,
    [{ count: cottonCount(20), mass: grams(6), newMass: grams(7) }],
    cottonCount,
  );
  cited(
    "45s for 15 lb in place of 10",
    published(taylor1909, "pp. 343 and 344, ch. XII", "20", "20"),
    countForWeight,
    [{ count: cottonCount(45), mass: pounds(10), newMass: pounds(15) }],
    cottonCount,
  );
  cited(
    "93 to the inch for 15 lb in place of 10",
    published(taylor1909, "pp. 343 and 344, ch. XII", "62", "62"),
    settForWeight,
    [{ sett: endsPerInch(93), mass: pounds(10), newMass: pounds(15) }],
    endsPerInch,
  );
  cited(
    "the weight alone, by the two rules together",
    published(taylor1909, "pp. 343 and 344, ch. XII", "20", "20"),
    countForWeightAndWeave,
    [
      {
        count: cottonCount(45),
        mass: pounds(10),
        newMass: pounds(15),
        ends: 3,
        intersections: 2,
        newEnds: 3,
        newIntersections: 2,
      },
    ],
    cottonCount,
  );

  it("comes out as wanted when count and sett are changed together", () => {
    const weights = fc.integer({ min: 1, max: 60 });
    fc.assert(
      fc.property(weights, weights, fc.constantFrom(toTwill, twillToTwill), (from, to, weave) => {
        const [mass, newMass] = [pounds(from), pounds(to)];
        const [sett, count] = [endsPerInch(90), cottonCount(40)];
        const newCount = countForWeightAndWeave({ count, mass, newMass, ...weave });
        const newSett = settForCountAndWeave({ sett, count, newCount, ...weave });
        const heavier = (newSett.in(endsPerInch) / newCount.in(cottonCount)) * (40 / 90);
        expect(heavier).toBeCloseTo(to / from, 9);
      }),
    );
  });

  it("is refused for a piece of no weight and a weave without intersections", () => {
    expect(() => countForWeight({ count: cottonCount(20), mass: pounds(0), newMass: pounds(1) })).toThrow(
      QuantityError,
    );
    expect(() => settForWeave({ sett: endsPerInch(20), ...plain, newEnds: 4, newIntersections: 0 })).toThrow(
      QuantityError,
    );
  });
});
