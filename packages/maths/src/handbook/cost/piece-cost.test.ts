import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { brooks1892, encyclopedie1765, wheeler1908, wolfensberger1921 } from "#ci/sources.js";
import type { Money } from "../../units/index.js";
import { currency, percentLost } from "../../units/index.js";
import { pieceCost } from "./piece-cost.js";
import { priceFloor } from "./price-floor.js";

const dollars = currency("USD");

const cents = currency("cents");

const pence = currency("pence");

const livres = currency("livres");

describe("what the yarn costs", () => {
  const charges = { costs: [livres(126), livres(80), livres(100), livres(100)], pieces: 1 };
  cited(
    "charges on a bale of silk",
    published(encyclopedie1765, "vol. 16, Velours", "406", "406"),
    pieceCost,
    [charges],
    livres,
  );
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
    expect(pieceCost({ costs: usd("30", "60"), pieces: 7.5 }).toString()).toBe("12 USD");
    expect(() => pieceCost({ costs: usd("30"), pieces: 0 })).toThrow("more than 0");
  });
  it("refuses money of two currencies in one sum, and a commission of the whole price", () => {
    const mixed = { costs: [dollars(3), currency("EUR")(4)], pieces: 1 };
    expect(() => pieceCost(mixed)).toThrow("pieceCost({ costs }): expected money in USD, as in costs, received EUR");
    expect(() => priceFloor({ cost: dollars(3), commission: percentLost(100) })).toThrow("less than 100 %");
    expect(() => dollars(3).in(currency("EUR"))).toThrow("a unit of money");
    expect(() => currency("US$")).toThrow("1 to 20 letters");
  });
});
