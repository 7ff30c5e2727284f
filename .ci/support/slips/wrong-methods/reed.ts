// Reeds, sleys, heddles, knots and costs.
import { mean, products, sum, total } from "./sum.js";
import type { Sum } from "./sum.js";

export const reed: readonly Sum[] = [
  sum(
    "settInReed",
    "endsPerInch",
    { reed: ["dentsPerInch", [12, 10, 15, 8]], endsPerDent: [null, [2, 3, 2, 4]] },
    (p) => p.reed * p.endsPerDent,
    [
      ["factor left out or turned over", "divided", (p) => p.reed / p.endsPerDent],
      ["term left out or wrong", "added", (p) => p.reed + p.endsPerDent],
      ["unit of length or mass", "to the centimetre", (p) => (p.reed * p.endsPerDent) / 2.54],
      ["answer halved, doubled or turned over", "turned over", (p) => p.endsPerDent / p.reed],
    ],
  ),
  sum(
    "endsInSley",
    null,
    {
      dents: [
        null,
        [
          [120, 40, 60],
          [88, 36, 50],
          [104, 30, 18],
        ],
      ],
      endsPerDent: [
        null,
        [
          [2, 3, 1],
          [1, 4, 2],
          [3, 1, 5],
        ],
      ],
    },
    (p) => products(p.dents, p.endsPerDent),
    [
      ["list", "the last left out", (p) => products(p.dents.slice(0, -1), p.endsPerDent)],
      ["list", "the first left out", (p) => products(p.dents.slice(1), p.endsPerDent.slice(1))],
      ["list", "sums multiplied", (p) => total(p.dents) * total(p.endsPerDent)],
      ["list", "mean ends a dent", (p) => total(p.dents) * mean(p.endsPerDent)],
      ["list", "first ends a dent for all", (p) => total(p.dents) * (p.endsPerDent[0] ?? 0)],
      ["a line for the answer", "dents in all", (p) => total(p.dents)],
    ],
    true,
  ),
  sum(
    "settOfSley",
    "endsPerInch",
    {
      reed: ["dentsPerInch", [12, 10, 15]],
      dents: [
        null,
        [
          [4, 2],
          [6, 3],
          [5, 2],
        ],
      ],
      endsPerDent: [
        null,
        [
          [2, 3],
          [1, 4],
          [3, 1],
        ],
      ],
    },
    (p) => (p.reed * products(p.dents, p.endsPerDent)) / total(p.dents),
    [
      ["list", "plain mean", (p) => p.reed * mean(p.endsPerDent)],
      ["list", "the first for all", (p) => p.reed * (p.endsPerDent[0] ?? 0)],
      [
        "factor left out or turned over",
        "divided",
        (p) => (p.reed * total(p.dents)) / products(p.dents, p.endsPerDent),
      ],
      ["factor left out or turned over", "dents not divided by", (p) => p.reed * products(p.dents, p.endsPerDent)],
      ["list", "the last left out", (p) => (p.reed * products(p.dents.slice(0, -1), p.endsPerDent)) / total(p.dents)],
    ],
  ),
  sum(
    "reedForSley",
    "dentsPerInch",
    {
      sett: ["endsPerInch", [24, 18, 30]],
      dents: [
        null,
        [
          [4, 2],
          [6, 3],
          [5, 2],
        ],
      ],
      endsPerDent: [
        null,
        [
          [2, 3],
          [1, 4],
          [3, 1],
        ],
      ],
    },
    (p) => (p.sett * total(p.dents)) / products(p.dents, p.endsPerDent),
    [
      ["list", "plain mean", (p) => p.sett / mean(p.endsPerDent)],
      [
        "factor left out or turned over",
        "upside down",
        (p) => (p.sett * products(p.dents, p.endsPerDent)) / total(p.dents),
      ],
      ["list", "sum of the ends a dent", (p) => p.sett / total(p.endsPerDent)],
      ["list", "number of kinds for the dents", (p) => (p.sett * p.dents.length) / products(p.dents, p.endsPerDent)],
    ],
  ),
  sum(
    "endsInReed",
    null,
    {
      reed: ["dentsPerInch", [12, 10, 15]],
      widthInReed: ["inches", [22.2, 19.55, 26.9]],
      endsPerDent: [null, [2, 3, 2]],
    },
    (p) => Math.ceil(p.reed * p.widthInReed) * p.endsPerDent,
    [
      ["rounding or one off", "dents rounded down", (p) => Math.floor(p.reed * p.widthInReed) * p.endsPerDent],
      ["a line for the answer", "dents given", (p) => Math.ceil(p.reed * p.widthInReed)],
      ["rounding or one off", "rounded at the end", (p) => Math.ceil(p.reed * p.widthInReed * p.endsPerDent)],
      ["rounding or one off", "one dent too many", (p) => (Math.ceil(p.reed * p.widthInReed) + 1) * p.endsPerDent],
      [
        "factor left out or turned over",
        "divided by ends a dent",
        (p) => Math.ceil(Math.ceil(p.reed * p.widthInReed) / p.endsPerDent),
      ],
    ],
    true,
  ),
  sum(
    "dentsForEnds",
    null,
    { ends: [null, [443, 371, 518]], endsPerDent: [null, [2, 3, 4]] },
    (p) => Math.ceil(p.ends / p.endsPerDent),
    [
      ["factor left out or turned over", "multiplied", (p) => p.ends * p.endsPerDent],
      ["rounding or one off", "rounded down", (p) => Math.floor(p.ends / p.endsPerDent)],
      ["rounding or one off", "one dent too many", (p) => Math.ceil(p.ends / p.endsPerDent) + 1],
    ],
    true,
  ),
  sum(
    "healdCloseness",
    "heddlesPerInch",
    { heddles: [null, [440, 384, 612]], shafts: [null, [4, 8, 6]], width: ["inches", [22, 24.5, 31]] },
    (p) => p.heddles / p.shafts / p.width,
    [
      ["factor left out or turned over", "shafts left out", (p) => p.heddles / p.width],
      ["factor left out or turned over", "shafts multiplied", (p) => (p.heddles * p.shafts) / p.width],
      ["a line for the answer", "heddles on a shaft", (p) => p.heddles / p.shafts],
      ["unit of length or mass", "to the centimetre", (p) => p.heddles / p.shafts / p.width / 2.54],
    ],
  ),
  sum(
    "knotClearance",
    null,
    {
      space: ["millimetres", [1.4, 1.05, 2.1]],
      oldDiameter: ["millimetres", [0.42, 0.36, 0.55]],
      newDiameter: ["millimetres", [0.5, 0.3, 0.7]],
    },
    (p) => p.space / Math.max(p.oldDiameter, p.newDiameter),
    [
      ["factor left out or turned over", "both threads together", (p) => p.space / (p.oldDiameter + p.newDiameter)],
      ["name for name", "mean of the two", (p) => (2 * p.space) / (p.oldDiameter + p.newDiameter)],
      ["name for name", "the thinner", (p) => p.space / Math.min(p.oldDiameter, p.newDiameter)],
      ["answer halved, doubled or turned over", "turned over", (p) => Math.max(p.oldDiameter, p.newDiameter) / p.space],
    ],
  ),
  sum(
    "spaceInDent",
    "millimetres",
    { reed: ["dentsPerInch", [12, 15, 10]], open: ["percentOf", [70, 65, 75]] },
    (p) => (25.4 * p.open) / p.reed,
    [
      ["part, rest or base", "the wire", (p) => (25.4 * (1 - p.open)) / p.reed],
      ["a line for the answer", "the whole dent", (p) => 25.4 / p.reed],
      ["unit of length or mass", "in inches", (p) => p.open / p.reed],
      ["unit of length or mass", "in centimetres", (p) => (2.54 * p.open) / p.reed],
      ["factor left out or turned over", "divided by the open part", (p) => 25.4 / p.open / p.reed],
    ],
  ),
  sum(
    "packagesToBuy",
    null,
    { needed: ["pounds", [2.7, 3.85, 1.6]], packageMass: ["ounces", [8, 4, 6]] },
    (p) => Math.ceil((p.needed * 16) / p.packageMass),
    [
      ["rounding or one off", "rounded down", (p) => Math.floor((p.needed * 16) / p.packageMass)],
      ["unit of length or mass", "ten ounces in the pound", (p) => Math.ceil((p.needed * 10) / p.packageMass)],
      ["unit of length or mass", "sixteen left out", (p) => Math.ceil(p.needed / p.packageMass)],
      ["factor left out or turned over", "multiplied", (p) => Math.ceil(p.needed * 16 * p.packageMass)],
    ],
    true,
  ),
  sum(
    "yarnCost",
    "EUR",
    { yarn: ["ounces", [44, 29, 61]], price: ["EUR", [14.5, 9.8, 21]], priceMass: ["ounces", [16, 8, 4]] },
    (p) => (p.yarn / p.priceMass) * p.price,
    [
      ["factor left out or turned over", "not divided", (p) => p.yarn * p.price],
      ["factor left out or turned over", "price divided by", (p) => p.yarn / p.priceMass / p.price],
      ["factor left out or turned over", "masses upside down", (p) => (p.priceMass / p.yarn) * p.price],
    ],
  ),
  sum(
    "priceFloor",
    "EUR",
    { cost: ["EUR", [48, 63.5, 120]], commission: ["percentLost", [30, 40, 25]] },
    (p) => p.cost / (1 - p.commission),
    [
      ["percentage the wrong way", "added", (p) => p.cost * (1 + p.commission)],
      ["percentage the wrong way", "taken off", (p) => p.cost * (1 - p.commission)],
      ["part, rest or base", "only the commission", (p) => p.cost * p.commission],
      ["percentage the wrong way", "divided by 1 + p", (p) => p.cost / (1 + p.commission)],
      ["part, rest or base", "divided by the commission", (p) => p.cost / p.commission],
    ],
  ),
  sum(
    "pieceCost",
    "EUR",
    {
      costs: [
        "EUR",
        [
          [84, 36.5, 12],
          [140, 58, 21],
          [61, 44, 9.5],
        ],
      ],
      pieces: [null, [8, 11, 6]],
    },
    (p) => total(p.costs) / p.pieces,
    [
      ["list", "the last left out", (p) => total(p.costs.slice(0, -1)) / p.pieces],
      ["a line for the answer", "the whole cost", (p) => total(p.costs)],
      ["reach", "only the last divided", (p) => total(p.costs.slice(0, -1)) + (p.costs.at(-1) ?? 0) / p.pieces],
      ["rounding or one off", "one piece too few", (p) => total(p.costs) / (p.pieces - 1)],
      ["list", "divided by the number of costs", (p) => total(p.costs) / p.costs.length],
    ],
  ),
  sum(
    "fibreShareByDryMass",
    "percentOf",
    {
      fibre: ["grams", [3.2, 5.4, 2.1]],
      others: [
        "grams",
        [
          [1.8, 0.9],
          [2.6, 1.3],
          [4.4, 0.7],
        ],
      ],
    },
    (p) => (100 * p.fibre) / (p.fibre + total(p.others)),
    [
      ["part, rest or base", "of the others", (p) => (100 * p.fibre) / total(p.others)],
      ["list", "the last left out", (p) => (100 * p.fibre) / (p.fibre + total(p.others.slice(0, -1)))],
      ["part, rest or base", "as a fraction", (p) => p.fibre / (p.fibre + total(p.others))],
      ["part, rest or base", "the others' share", (p) => (100 * total(p.others)) / (p.fibre + total(p.others))],
    ],
  ),
];
