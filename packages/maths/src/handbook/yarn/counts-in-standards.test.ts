import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { dictionaryOfUnits, nistSp811, taylor1909, unRecommendation20 } from "#ci/sources.js";
import { cottonCount, cottonLeas, decitex, denier, grains, kilotex, tex, yardsPerPound } from "../../units/index.js";
import { convertCount } from "./convert-count.js";
import { yarnMass } from "./yarn-mass.js";

describe("counts in the lists of standards bodies", () => {
  const table = "appendix B.8";
  const poundsPerYard = "45359237/91440";
  cited(
    "one denier in tex, by the American guide",
    published(nistSp811, `${table}, denier`, "1.111111 E-07 kg/m", "1/9"),
    convertCount,
    [denier(1), tex],
    ["count", tex],
  );
  cited(
    "one tex in kilotex, by the American guide",
    published(nistSp811, `${table}, tex`, "1 E-06 kg/m", "0.001"),
    convertCount,
    [tex(1), kilotex],
    ["count", kilotex],
  );
  cited(
    "a pound to the yard in kilotex, by the American guide",
    published(nistSp811, `${table}, pound per yard`, "0.4960546 kg/m", poundsPerYard),
    convertCount,
    [yardsPerPound(1), kilotex],
    ["count", kilotex],
  );
  cited(
    "a pound to the yard in kilotex, by a dictionary of units",
    published(dictionaryOfUnits, "Line density", "0.496055 kg/m", poundsPerYard),
    convertCount,
    [yardsPerPound(1), kilotex],
    ["count", kilotex],
  );
  cited(
    "one decitex, code A47",
    published(unRecommendation20, "A47", "1 g/10 km", "0.1"),
    convertCount,
    [decitex(1), tex],
    ["count", tex],
  );
  cited(
    "one denier, codes A49 and M83",
    published(unRecommendation20, "A49, M83", "1 g/9 km", "1/9"),
    convertCount,
    [denier(1), tex],
    ["count", tex],
  );
});

describe("what leas of ones weigh, the dividend for the count", () => {
  for (const leas of [2, 3, 4, 5, 6, 7]) {
    const dividend = String(1000 * leas);
    cited(
      `${String(leas)} leas`,
      published(taylor1909, "p. 430 of the copy", dividend, dividend),
      yarnMass,
      [{ length: cottonLeas(leas), count: cottonCount(1) }],
      grains,
    );
  }
});
