import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { taylor1909, wolfensberger1921 } from "#ci/sources.js";
import { dentsInSley } from "./dents-in-sley.js";
import type { Sley } from "./sley-from.js";

const repeated = <T>(times: number, part: readonly T[]): readonly T[] =>
  Array.from({ length: times }, () => part).flat();

/** Taylor's crammed stripe: 48 ends four in a dent, then five crammed and one alone with empty dents between. */
const taylorsStripe: Sley = {
  dents: [12, ...repeated(3, [1, 1, 1, 1]), 1],
  endsPerDent: [4, ...repeated(3, [5, 0, 1, 0]), 5],
};

const pekin = [7, ...repeated(7, [34, 2, 10, 2, 10, 2, 10, 2, 39, 5, 4, 5, 4, 5, 15, 2, 15, 5, 4, 5, 4, 5, 5]), 28, 7];

describe("dents in a sleying", () => {
  cited("a crammed stripe", published(taylor1909, "p. 221 of the copy", "25", "25"), dentsInSley, [
    { dents: taylorsStripe.dents },
  ]);
  cited("satin and plain stripe", published(taylor1909, "p. 290, ch. XI", "49", "49"), dentsInSley, [
    { dents: [24, 25] },
  ]);
  cited("pekin stripe", published(wolfensberger1921, "p. 96, disposition 6", "1400", "1400"), dentsInSley, [
    { dents: pekin },
  ]);

  it("are those of two parts together, wherever it is cut in two", () => {
    const parts = fc.array(fc.integer({ min: 1, max: 90 }), { minLength: 1, maxLength: 9 });
    fc.assert(
      fc.property(parts, parts, (left, right) => {
        const [one, other, all] = [left, right, [...left, ...right]].map((dents) => dentsInSley({ dents }));
        expect(all).toBe(Number(one) + Number(other));
      }),
    );
  });
});

describe("the limits of dents in sley", () => {
  limits(dentsInSley, ["of one part are the dents of the part", { dents: [8] }, 8], { dents: [0] });
});
