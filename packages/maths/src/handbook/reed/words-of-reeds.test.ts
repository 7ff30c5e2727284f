import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import {
  houseOfWool,
  newEnglishDictionaryBeer,
  sizesPorter,
  sponsEncyclopaedia,
  taylor1909,
  wikipediaReed,
} from "#ci/sources.js";
import { inUnit } from "../../engine/quantity/index.js";
import { dentsPerInch, endsPerInch, inches, millimetres, scotchPorter } from "../../units/index.js";
import { dentsInParts } from "./dents-in-parts.js";
import { endsInSley } from "./ends-in-sley.js";
import { exactSley } from "./exact-sley.js";
import { heddlesPerShaft } from "./heddles-per-shaft.js";

describe("the words of reeds", () => {
  cited(
    "a hundred splits in five porters, or beers, of 20",
    published(newEnglishDictionaryBeer, "White, 1860", "a hundred splits in five equal parts", "100"),
    dentsInParts,
    [{ parts: 5, dentsInPart: 20 }],
  );
  cited("a porter of 20 splits holds 40 threads", published(sizesPorter, "whole entry", "40", "40"), endsInSley, [
    { dents: [20], endsPerDent: [2] },
  ]);
  cited(
    "16 porters of jute hessian in dents to the inch",
    published(sponsEncyclopaedia, "Jute Manufactures, part 7", "16 porters of 20 splits in 37 in", "320/37"),
    inUnit,
    [scotchPorter(16), dentsPerInch],
    dentsPerInch,
  );
  cited(
    "20 to the inch in a 10-dent reed, by the rule of a guide",
    published(
      houseOfWool,
      "the rule above the chart",
      "dents per inch ÷ ends per inch",
      "2",
      "misprint: turned about; the ends to the inch are divided by the dents to the inch",
    ),
    exactSley,
    [{ reed: dentsPerInch(10), sett: endsPerInch(20), mostDents: 5 }],
    "order",
  );
  cited(
    "twenty ends of five-shaft satin and sixteen of plain on the fewest shafts",
    published(taylor1909, "p. 166 of the copy", "7 shafts", "4,4,4,4,4,8,8"),
    heddlesPerShaft,
    [
      {
        shafts: 7,
        parts: [
          { threading: [1, 2, 3, 4, 5], times: 4 },
          { threading: [6, 7], times: 8 },
        ],
      },
    ],
    "onEach",
  );
});

describe("the height of a reed", () => {
  const at = "Construction";
  cited(
    "of a power loom",
    published(wikipediaReed, at, "89", "88.9"),
    inUnit,
    [inches("3.5"), millimetres],
    millimetres,
  );
  const about = "printed with an about";
  cited(
    "of a hand loom",
    published(wikipediaReed, at, "100", "101.6", about),
    inUnit,
    [inches(4), millimetres],
    millimetres,
  );
});
