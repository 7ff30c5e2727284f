import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { allFiberArtsPricing, brooks1892, encyclopedie1765, kilgus2025, taylor1909, wheeler1908 } from "#ci/sources.js";
import { currency, ounces, pounds } from "../../units/index.js";
import { yarnCost } from "./yarn-cost.js";

const dollars = currency("USD");

const cents = currency("cents");

const pence = currency("pence");

const livres = currency("livres");

describe("what the yarn costs", () => {
  const brooks = "ch. IX, pp. 150-151";
  const warp = { yarn: pounds("3.4375"), price: pence(8), priceMass: pounds(1) };
  cited("3 lb 7 oz of warp", published(brooks1892, brooks, "27.5", "27.5"), yarnCost, [warp], pence);
  const weft = { yarn: pounds("2.859375"), price: pence(8), priceMass: pounds(1) };
  const putUp = "put up to the whole penny";
  cited("2 lb 13 3/4 oz of weft", published(brooks1892, brooks, "23", "22.875", putUp), yarnCost, [weft], pence);
  const rug = (rate: number): Parameters<typeof yarnCost>[0] => ({
    yarn: pounds(2),
    price: cents(rate),
    priceMass: pounds(3),
  });
  cited("warp of a rug, dearer", published(wheeler1908, "p. 74", "14", "40/3", "put up"), yarnCost, [rug(20)], cents);
  cited(
    "warp of a rug, cheaper",
    published(wheeler1908, "p. 74", "10 1/2", "32/3", "about"),
    yarnCost,
    [rug(16)],
    cents,
  );
  const dummy = { yarn: ounces(5), price: dollars("10.95"), priceMass: ounces(8) };
  cited("a warp of thrift yarn", published(kilgus2025, "opening", "6.84", "6.84375"), yarnCost, [dummy], dollars);
  const bale = { yarn: pounds(1), price: livres(406), priceMass: pounds(75) };
  const sols = "misprint: 406 ÷ 75 is 5 livres 8 sols 3 deniers; 5 livres 4 sols are a 75th of 390";
  cited(
    "charges on a pound of silk",
    published(encyclopedie1765, "vol. 16, Velours", "5 livres 4 sols", "406/75", sols),
    yarnCost,
    [bale],
    livres,
  );
  const taylor = "ch. XII, pp. 325-326";
  // 36 in at 70 ends and 78 yd of 32s; 36 in at 67 picks and 75 yd of 40s.
  const taylorWarp = { yarn: pounds("7.3125"), price: pence(7), priceMass: pounds(1) };
  cited("2,520 ends of 78 yd", published(taylor1909, taylor, "51.188", "51.1875"), yarnCost, [taylorWarp], pence);
  // 45 in at 6 ends and 12 yd: 3,240 yd at 2,240 yd to the pound.
  const sold = { yarn: pounds("1.4464285714285714285714285714285714"), price: dollars(40), priceMass: pounds(1) };
  const early = "the pounds were rounded to 1.45 first";
  cited(
    "warp of three shawls",
    published(allFiberArtsPricing, "example", "58", "405/7", early),
    yarnCost,
    [sold],
    dollars,
  );
  const ounce = { yarn: pounds("2.6"), price: dollars("6.20"), priceMass: pounds(1) };
  it("is what the bill of the silk warp says, within what its weights are rounded to", () => {
    expect(yarnCost(ounce).in(dollars)).toBe(16.12);
  });
});

describe("the limits of yarn cost", () => {
  limits(
    yarnCost,
    [
      "of a package is the price of a package",
      { yarn: pounds(1), price: currency("USD")(24), priceMass: pounds(1) },
      24,
      currency("USD"),
    ],
    { yarn: pounds(0), price: currency("USD")(0), priceMass: pounds(0) },
  );
});
