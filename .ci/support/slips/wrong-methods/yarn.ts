// Counts, folding, regain. Mean for harmonic mean: Posamentier 2007; conversions: Wennberg-Capellades et al. 2022.
import { inverses, mean, products, quotients, sum, total } from "./sum.js";
import type { Sum } from "./sum.js";

const counts = [
  "cottonCount",
  [
    [20, 30, 40],
    [16, 24, 36],
    [10, 14, 24],
    [18, 32, 50],
  ],
] as const;

export const yarn: readonly Sum[] = [
  sum("foldedCount", "cottonCount", { counts }, (p) => 1 / inverses(p.counts), [
    ["list", "the mean", (p) => mean(p.counts)],
    ["list", "the sum", (p) => total(p.counts)],
    ["list", "the harmonic mean", (p) => p.counts.length / inverses(p.counts)],
    ["list", "the mean divided by the threads", (p) => mean(p.counts) / p.counts.length],
    ["list", "the last left out", (p) => 1 / inverses(p.counts.slice(0, -1))],
    ["list", "the first left out", (p) => 1 / inverses(p.counts.slice(1))],
    ["answer halved, doubled or turned over", "not turned over at the end", (p) => inverses(p.counts)],
  ]),
  sum("averageCount", "cottonCount", { counts }, (p) => p.counts.length / inverses(p.counts), [
    ["list", "the mean", (p) => mean(p.counts)],
    ["list", "not multiplied by the number", (p) => 1 / inverses(p.counts)],
    ["list", "the last left out", (p) => (p.counts.length - 1) / inverses(p.counts.slice(0, -1))],
    ["list", "the sum", (p) => total(p.counts)],
  ]),
  sum(
    "averageCountByLength",
    "cottonCount",
    {
      lengths: [
        "yards",
        [
          [1200, 800, 500],
          [900, 2400, 1500],
          [640, 360, 1000],
        ],
      ],
      counts: [
        "cottonCount",
        [
          [20, 30, 12],
          [16, 24, 36],
          [10, 14, 24],
        ],
      ],
    },
    (p) => total(p.lengths) / quotients(p.lengths, p.counts),
    [
      ["list", "weighted mean", (p) => products(p.lengths, p.counts) / total(p.lengths)],
      ["list", "plain mean", (p) => mean(p.counts)],
      ["list", "harmonic mean", (p) => p.counts.length / inverses(p.counts)],
      ["list", "the last left out", (p) => total(p.lengths.slice(0, -1)) / quotients(p.lengths.slice(0, -1), p.counts)],
      [
        "answer halved, doubled or turned over",
        "turned over",
        (p) => quotients(p.lengths, p.counts) / total(p.lengths),
      ],
    ],
  ),
  sum(
    "averageCountByMass",
    "cottonCount",
    {
      masses: [
        "pounds",
        [
          [12, 8, 5],
          [9, 24, 15],
          [6.5, 3.5, 10],
        ],
      ],
      counts: [
        "cottonCount",
        [
          [20, 30, 12],
          [16, 24, 36],
          [10, 14, 24],
        ],
      ],
    },
    (p) => products(p.masses, p.counts) / total(p.masses),
    [
      ["list", "weighted as lengths", (p) => total(p.masses) / quotients(p.masses, p.counts)],
      ["list", "plain mean", (p) => mean(p.counts)],
      ["list", "sums multiplied", (p) => (total(p.masses) * total(p.counts)) / total(p.masses)],
      ["list", "divided by the number of lots", (p) => products(p.masses, p.counts) / p.masses.length],
      ["a line for the answer", "hanks in all", (p) => products(p.masses, p.counts)],
    ],
  ),
  sum(
    "foldedCountDirect",
    "tex",
    {
      counts: [
        "tex",
        [
          [20, 30, 25],
          [16, 24, 36],
          [40, 14, 24],
        ],
      ],
    },
    (p) => total(p.counts),
    [
      ["list", "the mean", (p) => mean(p.counts)],
      ["list", "as for indirect counts", (p) => 1 / inverses(p.counts)],
      ["list", "the last left out", (p) => total(p.counts.slice(0, -1))],
      ["unit of length or mass", "decitex", (p) => total(p.counts) * 10],
    ],
  ),
  sum(
    "contractedCount",
    "cottonCount",
    {
      count: ["cottonCount", [20, 30, 16, 40]],
      plies: [null, [2, 3, 2, 4]],
      contraction: ["percentLost", [4, 6, 5, 8]],
    },
    (p) => (p.count / p.plies) * (1 - p.contraction),
    [
      ["percentage the wrong way", "divided out", (p) => p.count / p.plies / (1 - p.contraction)],
      ["percentage the wrong way", "added", (p) => (p.count / p.plies) * (1 + p.contraction)],
      ["percentage the wrong way", "divided by 1 + p", (p) => p.count / p.plies / (1 + p.contraction)],
      ["percentage left out", "forgotten", (p) => p.count / p.plies],
      ["factor left out or turned over", "plies multiplied", (p) => p.count * p.plies * (1 - p.contraction)],
      ["factor left out or turned over", "plies left out", (p) => p.count * (1 - p.contraction)],
      ["part, rest or base", "only the part", (p) => (p.count / p.plies) * p.contraction],
    ],
  ),
  sum(
    "singleForFolded",
    "cottonCount",
    {
      folded: ["cottonCount", [9.6, 14, 7.5, 19]],
      plies: [null, [2, 3, 4, 2]],
      contraction: ["percentLost", [4, 6, 5, 8]],
    },
    (p) => (p.folded * p.plies) / (1 - p.contraction),
    [
      ["percentage the wrong way", "added", (p) => p.folded * p.plies * (1 + p.contraction)],
      ["percentage the wrong way", "taken off", (p) => p.folded * p.plies * (1 - p.contraction)],
      ["percentage left out", "forgotten", (p) => p.folded * p.plies],
      ["factor left out or turned over", "divided by plies", (p) => p.folded / p.plies / (1 - p.contraction)],
    ],
  ),
  sum(
    "countFromWrapping",
    "cottonCount",
    { length: ["yards", [120, 240, 60, 80]], mass: ["grains", [56, 85, 31, 42]] },
    (p) => p.length / 840 / (p.mass / 7000),
    [
      ["trade constant", "560 yards", (p) => p.length / 560 / (p.mass / 7000)],
      ["trade constant", "hank left out", (p) => p.length / (p.mass / 7000)],
      ["answer halved, doubled or turned over", "turned over", (p) => (p.mass / 7000 / p.length) * 840],
      ["trade constant", "437.5 grains, an ounce", (p) => p.length / 840 / (p.mass / 437.5)],
      ["trade constant", "times the hank", (p) => (p.length * 840) / (p.mass / 7000)],
    ],
  ),
  sum(
    "yarnLength",
    "yards",
    { mass: ["ounces", [8, 11, 4, 13.5]], count: ["cottonCount", [10, 8, 16, 5]] },
    (p) => (p.mass / 16) * p.count * 840,
    [
      ["trade constant", "560 yards", (p) => (p.mass / 16) * p.count * 560],
      ["trade constant", "300 yards", (p) => (p.mass / 16) * p.count * 300],
      ["trade constant", "divided by the count", (p) => ((p.mass / 16) * 840) / p.count],
      ["unit of length or mass", "ounces as pounds", (p) => p.mass * p.count * 840],
      ["trade constant", "hank left out", (p) => (p.mass / 16) * p.count],
      ["unit of length or mass", "ten ounces in the pound", (p) => (p.mass / 10) * p.count * 840],
    ],
  ),
  sum(
    "yarnMass",
    "ounces",
    { length: ["yards", [3080, 5250, 1764, 2430]], count: ["cottonCount", [8, 10, 12, 5]] },
    (p) => (p.length / (p.count * 840)) * 16,
    [
      ["trade constant", "the worsted hank", (p) => (p.length / (p.count * 560)) * 16],
      ["unit of length or mass", "pounds called ounces", (p) => p.length / (p.count * 840)],
      ["trade constant", "times the count", (p) => ((p.length * p.count) / 840) * 16],
      ["factor left out or turned over", "no count", (p) => (p.length / 840) * 16],
      ["unit of length or mass", "grams", (p) => (p.length / (p.count * 840)) * 453.6],
    ],
  ),
  sum(
    "yarnMassDirect",
    "grams",
    { length: ["metres", [2600, 3450, 1820]], count: ["tex", [74, 60, 118]] },
    (p) => (p.length * p.count) / 1000,
    [
      ["trade constant", "divided by the count", (p) => (p.length / p.count) * 1000],
      ["trade constant", "9000, as for denier", (p) => (p.length * p.count) / 9000],
      ["trade constant", "as indirect, metres by count", (p) => p.length / p.count],
      ["unit of length or mass", "ounces", (p) => (p.length * p.count) / 1000 / 28.35],
    ],
  ),
  sum(
    "invoiceMass",
    "kilograms",
    {
      mass: ["kilograms", [250, 84, 137]],
      content: ["percentLost", [12, 9, 14]],
      regain: ["percentAdded", [8.5, 18.25, 13]],
    },
    (p) => p.mass * (1 - p.content) * (1 + p.regain),
    [
      ["percentage the wrong way", "regain on what it is", (p) => (p.mass * (1 - p.content)) / (1 - p.regain)],
      ["percentage the wrong way", "regain taken off", (p) => p.mass * (1 - p.content) * (1 - p.regain)],
      ["several percentages", "difference of the two", (p) => p.mass * (1 + p.regain - p.content)],
      ["percentage the wrong way", "content taken as regain", (p) => (p.mass / (1 + p.content)) * (1 + p.regain)],
      ["a line for the answer", "the dry mass", (p) => p.mass * (1 - p.content)],
      ["percentage left out", "content forgotten", (p) => p.mass * (1 + p.regain)],
    ],
  ),
  sum(
    "regainFromContent",
    "percentAdded",
    { content: ["percentLost", [8, 11, 14, 6.5]] },
    (p) => (100 * p.content) / (1 - p.content),
    [
      ["percentage the wrong way", "divided by 1 + p", (p) => (100 * p.content) / (1 + p.content)],
      ["percentage the wrong way", "times 1 + p", (p) => 100 * p.content * (1 + p.content)],
      ["part, rest or base", "as a fraction", (p) => p.content / (1 - p.content)],
      ["part, rest or base", "100 more", (p) => 100 / (1 - p.content)],
    ],
  ),
  sum(
    "blendRegain",
    "percentAdded",
    {
      shares: [
        "percentOf",
        [
          [60, 40],
          [45, 55],
          [70, 30],
        ],
      ],
      regains: [
        "percentAdded",
        [
          [18.25, 8.5],
          [13, 8.5],
          [16, 1.5],
        ],
      ],
    },
    (p) => (100 * products(p.shares, p.regains)) / total(p.shares),
    [
      ["list", "plain mean", (p) => 100 * mean(p.regains)],
      ["list", "the first only", (p) => 100 * (p.shares[0] ?? 0) * (p.regains[0] ?? 0)],
      ["list", "the sum", (p) => 100 * total(p.regains)],
      ["part, rest or base", "as a fraction", (p) => products(p.shares, p.regains)],
    ],
  ),
];
