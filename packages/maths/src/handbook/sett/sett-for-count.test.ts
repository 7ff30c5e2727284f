import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { taylor1909 } from "#ci/sources.js";
import { cottonCount, endsPerInch } from "../../units/index.js";
import { countForSett } from "./count-for-sett.js";
import { settForCount } from "./sett-for-count.js";

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

describe("the limits of sett for count", () => {
  limits(
    settForCount,
    [
      "stays where the count stays",
      { sett: endsPerInch(40), count: cottonCount(20), newCount: cottonCount(20) },
      40,
      endsPerInch,
    ],
    { sett: endsPerInch(0), count: cottonCount(0), newCount: cottonCount(0) },
  );
});
