import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { taylor1909 } from "#ci/sources.js";
import { dentsPerInch, endsPerInch, stockportReed } from "../../units/index.js";
import { reedForSley } from "./reed-for-sley.js";
import type { Sley } from "./sley-from.js";

const repeated = <T>(times: number, part: readonly T[]): readonly T[] =>
  Array.from({ length: times }, () => part).flat();

/** Taylor's crammed stripe: 48 ends four in a dent, then five crammed and one alone with empty dents between. */
const taylorsStripe: Sley = {
  dents: [12, ...repeated(3, [1, 1, 1, 1]), 1],
  endsPerDent: [4, ...repeated(3, [5, 0, 1, 0]), 5],
};

describe("reed for a sleying", () => {
  cited(
    "a crammed stripe whose harness has 100 to the inch",
    published(taylor1909, "p. 221 of the copy", "35.2", "2500/71"),
    reedForSley,
    [{ sett: endsPerInch(100), ...taylorsStripe }],
    dentsPerInch,
  );
  cited(
    "satin and plain stripe whose harness has 100 to the inch",
    published(taylor1909, "p. 290, ch. XI", "33 82/146", "2450/73"),
    reedForSley,
    [{ sett: endsPerInch(100), dents: [24, 25], endsPerDent: [4, 2] }],
    dentsPerInch,
  );
  cited(
    "satin and plain stripe at 100 to the inch, as a Stockport number",
    published(taylor1909, "p. 290, ch. XI", "67", "4900/73"),
    reedForSley,
    [{ sett: endsPerInch(100), dents: [24, 25], endsPerDent: [4, 2] }],
    stockportReed,
  );
});

describe("the limits of reed for sley", () => {
  limits(
    reedForSley,
    [
      "is the sett where one end stands in every dent",
      { sett: endsPerInch(24), dents: [3], endsPerDent: [1] },
      24,
      dentsPerInch,
    ],
    { sett: endsPerInch(0), dents: [0], endsPerDent: [-1] },
  );
});
