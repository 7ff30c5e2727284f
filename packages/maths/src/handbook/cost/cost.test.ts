import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import {
  allFiberArtsPricing,
  brooks1892,
  fry2024,
  leigh2023,
  taylor1909,
  wheeler1908,
  wolfensberger1921,
} from "../../sources/index.js";
import {
  cottonCount,
  currency,
  grams,
  metres,
  percentAdded,
  percentLost,
  percentOf,
  pounds,
  yards,
} from "../../units/index.js";
import type { Money } from "../../units/index.js";
import { yarnMass } from "../yarn/index.js";
import {
  costByEnds,
  costOverLength,
  fibreShareByConditionedMass,
  fibreShareByDryMass,
  pieceCost,
  priceFloor,
  workCost,
  yarnCost,
  yarnCostByLength,
} from "./index.js";

const dollars = currency("USD");
const cents = currency("cents");
const pence = currency("pence");

describe("what the yarn costs", () => {
  const at = "November 2023";
  const balls = { yarn: yards(1854), price: dollars(4), packageLength: yards(400) };
  cited("1,854 yd in balls of 400", published(leigh2023, at, "18.54", "18.54"), yarnCostByLength, [balls], dollars);
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

describe("work paid by the end", () => {
  const sheet = (page: string, disposition: number): string =>
    `p. ${page}, Disposition ${String(disposition)} cost sheet`;
  const warped: readonly (readonly [
    ends: number,
    cents: string,
    page: string,
    n: number,
    prints: string,
    exact: string,
  ])[] = [
    [4032, "3", "104", 1, "1.21", "120.96"],
    [5904, "2.75", "104", 2, "1.62", "162.36"],
    [12624, "2.75", "105", 3, "3.47", "347.16"],
    [6520, "2.75", "105", 4, "1.79", "179.3"],
    [3984, "3", "106", 5, "1.20", "119.52"],
    [8316, "4", "107", 6, "3.32", "332.64"],
    [4320, "3", "108", 7, "1.30", "129.6"],
    [10680, "2.5", "109", 9, "2.67", "267"],
    [4760, "4", "109", 10, "1.90", "190.4"],
  ];
  for (const [ends, rate, page, n, prints, exact] of warped) {
    const input = { ends, charge: cents(rate), endsCharged: 100 };
    const differs = n === 6 ? "cut off, not rounded; printed in dollars" : "printed in dollars, to the cent";
    cited(
      `warping of ${String(ends)} ends for 100 yd`,
      published(wolfensberger1921, sheet(page, n), prints, exact, differs),
      costByEnds,
      [input],
      cents,
    );
  }
  const joined: readonly (readonly [
    knots: number,
    rate: string,
    warp: number,
    page: string,
    n: number,
    prints: string,
    exact: string,
    differs?: string,
  ])[] = [
    [3978, "0.9945", 300, "104", 1, "0.33", "0.3315"],
    [
      5872,
      "2.0552",
      600,
      "104",
      2,
      "0.25",
      "0.34253333333333333",
      "misprint: 25 cents a thousand would give it, printed is 35",
    ],
    [12256, "3.064", 600, "105", 3, "0.51", "0.51066666666666667"],
    [6424, "1.606", 600, "105", 4, "0.27", "0.26766666666666667"],
    [1992, "0.5976", 300, "106", 5, "0.20", "0.1992"],
    [
      4260,
      "1.278",
      300,
      "108",
      7,
      "0.41",
      "0.426",
      "misprint: the same rule as in the others gives a cent and a half more",
    ],
    [5296, "1.5888", 600, "108", 8, "0.27", "0.2648", "put up to the next cent"],
    [4700, "2.35", 600, "109", 10, "0.40", "0.39166666666666667", "put up to the next cent"],
  ];
  for (const [knots, cost, warp, page, n, prints, exact, differs] of joined) {
    const input = { cost: dollars(cost), length: metres(100), warpLength: metres(warp) };
    cited(
      `joining of ${String(knots)} ends, borne by 100 m of ${String(warp)}`,
      published(wolfensberger1921, `${sheet(page, n)}; rule p. 101`, prints, exact, differs),
      costOverLength,
      [input],
      dollars,
    );
  }
  it("by the thousand is what is borne by the length", () => {
    expect(costByEnds({ ends: 3978, charge: dollars("0.25"), endsCharged: 1000 }).in(dollars)).toBe(0.9945);
  });
});

describe("what a piece costs, and the least price", () => {
  const usd = (...amounts: readonly string[]): readonly Money[] => amounts.map((amount) => dollars(amount));
  const sheets: readonly (readonly [page: string, n: number, lines: readonly string[], prints: string])[] = [
    ["104", 1, ["16.23", "1.21", "0.33", "15.02", "7", "1", "1", "7"], "48.79"],
    ["104", 2, ["23.39", "1.62", "0.25", "14.25", "12", "1.50", "2", "7"], "62.01"],
    ["105", 3, ["55.59", "3.47", "0.51", "50.69", "13", "2", "2.50", "8"], "135.76"],
    ["105", 4, ["26.57", "1.79", "0.27", "40.19", "10", "1", "1", "7"], "87.82"],
    ["106", 5, ["15.59", "1.20", "0.20", "16.02", "8", "1", "5", "8"], "55.01"],
    ["108", 7, ["18.24", "1.30", "0.41", "14.25", "9", "1", "1", "6.78"], "51.98"],
    ["109", 10, ["36.72", "1.90", "0.40", "34.50", "15", "1", "6", "11.94"], "107.46"],
  ];
  for (const [page, n, lines, prints] of sheets) {
    cited(
      `100 yd of Disposition ${String(n)}, all costs`,
      published(wolfensberger1921, `p. ${page}, Disposition ${String(n)} cost sheet`, prints, prints),
      pieceCost,
      [{ costs: usd(...lines), pieces: 1 }],
      dollars,
    );
  }
  // The text divides by 87.5 or by 89 hundredths: discount and commission together off the price.
  const floors: readonly (readonly [
    page: string,
    n: number,
    cost: string,
    off: string,
    prints: string,
    exact: string,
  ])[] = [
    ["104", 1, "0.4879", "12.5", "0.5576", "0.5576"],
    ["104", 2, "0.6201", "11", "0.6967", "6201/8900"],
    ["105", 3, "0.6788", "11", "0.7627", "6788/8900"],
    ["105", 4, "0.8782", "11", "0.9867", "4391/4450"],
    ["106", 5, "0.5501", "12.5", "0.6287", "5501/8750"],
    ["108", 7, "0.5198", "12.5", "0.5941", "2599/4375"],
    ["109", 10, "1.0746", "12.5", "1.2281", "10746/8750"],
  ];
  for (const [page, n, cost, off, prints, exact] of floors) {
    cited(
      `price of a yard of Disposition ${String(n)}`,
      published(wolfensberger1921, `p. ${page}, Disposition ${String(n)} cost sheet`, prints, exact),
      priceFloor,
      [{ cost: dollars(cost), commission: percentLost(off) }],
      dollars,
    );
  }
  const hours = (n: number): Parameters<typeof workCost>[0] => ({ hours: n, hourlyRate: dollars(15) });
  cited("ten hours at a batch", published(fry2024, "whole post", "150", "150"), workCost, [hours(10)], dollars);
  cited("eleven hours at a batch", published(fry2024, "whole post", "165", "165"), workCost, [hours(11)], dollars);
  const piece = [pence("27.5"), pence("22.875"), pence("9.5"), pence("9.5")];
  cited(
    "a piece at twice the weaving",
    published(brooks1892, "ch. IX, pp. 150-151", "69.5", "69.375", "the weft was put up to the whole penny"),
    pieceCost,
    [{ costs: piece, pieces: 1 }],
    pence,
  );
  cited(
    "a rug of wool or of dyed cotton, dearer",
    published(wheeler1908, "p. 74", "64", "64"),
    pieceCost,
    [{ costs: [cents(14), cents(30), cents(20)], pieces: 1 }],
    cents,
  );

  it("shares all costs over the pieces fit for sale", () => {
    expect(pieceCost({ costs: usd("30", "60"), pieces: 9 }).toString()).toBe("10 USD");
    expect(pieceCost({ costs: usd("30", "60"), pieces: 8 }).toString()).toBe("11.25 USD");
  });

  it("refuses money of two currencies in one sum, and a commission of the whole price", () => {
    const mixed = { costs: [dollars(3), currency("EUR")(4)], pieces: 1 };
    expect(() => pieceCost(mixed)).toThrow("pieceCost({ costs }): expected money in USD, as in costs, received EUR");
    expect(() => priceFloor({ cost: dollars(3), commission: percentLost(100) })).toThrow("less than 100 %");
    expect(() => dollars(3).in(currency("EUR"))).toThrow("a unit of money");
    expect(() => currency("US$")).toThrow("1 to 20 letters");
  });
});

describe("the share of a fibre", () => {
  it("by dry mass and by conditioned mass, all shares together the whole piece", () => {
    const [wool, cotton] = [grams(100), grams(100)];
    expect(fibreShareByDryMass({ fibre: wool, others: [cotton] }).in(percentOf)).toBe(50);
    const regains = [percentAdded(16), percentAdded("8.5")] as const;
    const one = { fibre: wool, regain: regains[0], others: [cotton], otherRegains: [regains[1]] };
    const other = { fibre: cotton, regain: regains[1], others: [wool], otherRegains: [regains[0]] };
    const shares = [one, other].map((input) => fibreShareByConditionedMass(input).in(percentOf));
    expect(shares[0]).toBeCloseTo(11600 / 224.5, 10);
    expect((shares[0] ?? 0) + (shares[1] ?? 0)).toBeCloseTo(100, 10);
  });

  it("counts the yarn left in the piece", () => {
    // 9 g of 150 g cut off as thrums, all of it cotton.
    expect(fibreShareByDryMass({ fibre: grams(60), others: [grams(81)] }).in(percentOf)).toBeCloseTo(6000 / 141, 10);
  });
});

it("yarn by its count costs what its mass costs", () => {
  const mass = yarnMass({ length: yards(2520 * 78), count: cottonCount(32) });
  expect(yarnCost({ yarn: mass, price: pence(7), priceMass: pounds(1) }).in(pence)).toBeCloseTo(51.1875, 10);
});
