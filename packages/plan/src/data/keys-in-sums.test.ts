// One job for each key that the nine examples leave out: one number of it, worked in fractions by a program of its own.
import { grams, inches, isQuantity, ounces } from "@thrum/maths";
import { expect, it } from "vitest";
import { exampleText, jobIn } from "#ci/example-jobs.js";
import { figureAt } from "./at-path.js";
import { planOf } from "./plan-data.js";

const UNITS = { in: inches, g: grams, oz: ounces };

/** 160 ends in 80 dents of 10 to the inch, 8 in wide; 18 in finished are 20 in on the loom. */
const RUN = `stripes: [80 oat, 80 rose]
loom: { reed: 10 per inch, sley: 2, threading: [1, 2, 3, 4] }
oldWarp: { ends: 160 }
join: { knots: in front of the reed, perHour: 190 }
cloth: { picks: 16 per inch, takeUp: 8 % lost, lengthLoomToFinished: 10 % lost }
warp: { wasteInFront: 10 in, wasteBehind: 18 in }
`;
const PIECE = "{ number: 4, name: napkin, finishedLength: 18 in }";
const PIECES = `pieces: [${PIECE}]
`;
const COUNT = "count: 2-ply of 8 cotton";
const yarns = (oat: string, rose = ""): string =>
  `yarns: { oat: { ${COUNT}, ${oat} }, rose: { ${COUNT}${rose === "" ? "" : `, ${rose}`} } }
`;
const napkins = exampleText("2-hall-napkins");

type Row = readonly [
  key: string,
  job: string,
  path: string,
  sum: string,
  value: number | readonly [over: number, under: number, unit: keyof typeof UNITS],
];

/** The run is 80/0.92 + 10 = 2230/23 in of warp. */
const rows: readonly Row[] = [
  // Packages.
  [
    "sold: several sizes, the largest bought",
    `${RUN}pieces: [{ number: 100, finishedLength: 18 in }]\nweft: oat\n${yarns("sold: 1 lb", "sold: [8 oz, 1 lb], onHand: none")}`,
    "yarn rose spare",
    "2 lb − 80 × (100 × 20 ÷ 0.92 + 10) in ÷ 36 ÷ 3360 = 32 oz − 16 × 25115/17388 oz",
    [38644, 4347, "oz"],
  ],
  [
    "sold: by length",
    `${RUN}${PIECES}weft: oat\n${yarns("sold: 300 m")}`,
    "yarn oat packageMass",
    "300 ÷ 0.9144 ÷ 3360 lb × 453.59237",
    [6479891, 146304, "g"],
  ],
  [
    "onHand: a sum of packages, mass and length",
    `${RUN}${PIECES}weft: oat\n${yarns("sold: 1 lb, onHand: 1/2 cone + 3 oz + 840 yd + 20 g")}`,
    "yarn oat there",
    "8 oz + 3 oz + 840 ÷ 3360 lb + 20 g = 15 × 28.349523125 g + 20 g",
    [142477711, 320000, "g"],
  ],
  [
    "winding.most: a mass",
    `${RUN}${PIECES}weft: oat\nwinding: { threads: 2, chains: by colour, most: 10 g }\n${yarns("sold: 1 lb")}`,
    "yarn oat mostInChain",
    "roundDown(10 g ÷ (2230/23 in ÷ 36 ÷ 3360 × 453.59237 g)) = roundDown(27.5042)",
    27,
  ],
  // Weft.
  [
    "weft: doubled in one shot",
    `${RUN}${PIECES}weft: oat + oat\n`,
    "weft 1_oat one",
    "20 in × 16 × 8 in × 2",
    [5120, 1, "in"],
  ],
  ["weft: two in turn", `${RUN}${PIECES}weft: oat / rose\n`, "weft 1_rose one", "20 × 16 × 8 in ÷ 2", [1280, 1, "in"]],
  [
    "weft: a stripe in picks of its own",
    `${RUN}${PIECES}weft: { stripes: [3 cm of rose at 6 per cm, the rest oat], lengths: at the loom }\n`,
    "weft 1_oat picks",
    "roundUp((20 − 3/2.54) × 16) = roundUp(38240/127 = 301.102); the rose 3 × 6 = 18 apart",
    302,
  ],
  [
    "weft.eachStripe: a piece in one weft is one stripe",
    `${RUN}${PIECES}weft: { stripes: oat, eachStripe: 6 in, allowance: 5 % added }\n`,
    "weft 1_oat withAllowance",
    "(20 × 16 × 8 + 6) × 1.05",
    [26943, 10, "in"],
  ],
  [
    "pieces: a header and a sample in wefts of their own",
    `${RUN}pieces: [{ name: header, atLoom: 3 in, weft: rose }, ${PIECE}, { name: sample, atLoom: 7 in, weft: oat / rose }]\nweft: oat\n`,
    "yarn rose inAll",
    "80 × ((3 + 4 × 20 + 7) ÷ 0.92 + 10) + 3 × 16 × 8 + 7 × 16 × 8 ÷ 2",
    [80 * (9000 + 920) + 832 * 92, 92, "in"],
  ],
  [
    "betweenPieces: picks of a yarn",
    `${RUN}${PIECES}betweenPieces: 4 picks of rose\nweft: oat\n`,
    "weft breaks_rose length",
    "3 breaks × 4 picks × 8 in",
    [96, 1, "in"],
  ],
  [
    "betweenPieces: a length",
    `${RUN}${PIECES}betweenPieces: 1/4 in\nweft: oat\n`,
    "warp needed",
    "(4 × 20 + 3 × 1/4) ÷ 0.92 + 10",
    [8995, 92, "in"],
  ],
  [
    "pieces.fringeEachEnd, fringeTwist: twisting changes no warp",
    `${RUN}pieces: [{ number: 4, finishedLength: 18 in, fringeEachEnd: 3 in, fringeTwist: 3 in to 2 in }]\n`,
    "warp needed",
    "80 ÷ 0.92 + 2 × 4 × 3 + 10",
    [2782, 23, "in"],
  ],
  [
    "pieces.fringeTwist: from tip to tip, by two measures of another fringe",
    `${RUN}pieces: [{ number: 4, finishedLength: 18 in, fringeEachEnd: 3 in, fringeTwist: 5 in to 4 in }]\n`,
    "piece 1 withFringe",
    "18 + 2 × 3 × 4 ÷ 5",
    [114, 5, "in"],
  ],
  [
    "pieces.fringeTwist: the fringe, by what is lost",
    `${RUN}pieces: [{ number: 4, finishedLength: 18 in, fringeEachEnd: 3 in, fringeTwist: 12.5 % lost }]\n`,
    "piece 1 twistedAtEachEnd",
    "3 × 7 ÷ 8",
    [21, 8, "in"],
  ],
  // Several sizes. Rose is 80 × 2230/23 in of 3360 yd per lb, 4460/4347 oz: five of 1/4 oz cost 5, two of 1 oz 7, one of each 4.50.
  ...(
    [
      ["yarn rose costOfLargest", "2 × 3.50", 7],
      ["yarn rose costOfMixture", "1 + 3.50", 4.5],
      ["size 1_rose alone", "4460/4347 ÷ 1/4, rounded up", 5],
      ["size 2_rose inMixture", "one of each", 1],
      ["yarn rose spareOfMixture", "5/4 − 4460/4347", [3895, 17388, "oz"]],
    ] as const
  ).map(([path, sum, value]): Row => [
    `yarns.sold: in two sizes, ${path}`,
    `${RUN}${PIECES}weft: oat\n${yarns("onHand: none", "onHand: none, sold: [1/4 oz at 1 EUR, 1 oz at 3.50 EUR]")}`,
    path,
    sum,
    value,
  ]),
  [
    "yarns.sold: by length in two sizes, the small ones cheaper",
    `${RUN}${PIECES}weft: oat\n${yarns("onHand: none", "onHand: none, sold: [100 yd at 1 EUR, 210 yd at 3 EUR]")}`,
    "yarn rose costOfMixture",
    "215.46 yd: 3 × 1 for 300 yd, 3 + 1 for 310, 2 × 3 for 420",
    3,
  ],
  [
    "yarns.sold: in two sizes without prices, so many of each alone",
    `${RUN}${PIECES}weft: oat\n${yarns("onHand: none", "onHand: none, sold: [1/4 oz, 1 oz]")}`,
    "size 2_rose alone",
    "4460/4347, rounded up",
    2,
  ],
  // Money and label. Oat 80 × 2230/23 in + 4 × 2560 in of weft, rose 80 × 2230/23 in.
  [
    "costs: the whole run",
    `${RUN}${PIECES}weft: oat\ncosts: { hours: 10, hourlyRate: 12 EUR, others: 8 EUR, commission: 30 % lost }\n${yarns("sold: 8 oz at 14.50 EUR", "sold: 8 oz at 12 EUR")}`,
    "price 1 cost",
    "(oat lb × 29 EUR + rose lb × 24 EUR + 120 + 8) ÷ 4 = 2327447/17388 ÷ 4",
    2327447 / 69552,
  ],
  [
    "costs.commission: the least price",
    `${RUN}${PIECES}weft: oat\ncosts: { hours: 10, hourlyRate: 12 EUR, others: 8 EUR, commission: 30 % lost }\n${yarns("sold: 8 oz at 14.50 EUR", "sold: 8 oz at 12 EUR")}`,
    "price 1 floor",
    "2327447/69552 ÷ 0.7",
    11637235 / 243432,
  ],
  [
    "label.regain: wool by dry mass",
    `${RUN}${PIECES}weft: oat\nlabel: { regain: { cotton: 8.5 % added, wool: 17 % added } }\n${yarns("fibre: cotton", "fibre: wool")}`,
    "fibre wool byDryMass",
    "in the pieces cotton 80 × 80 ÷ 0.92 + 4 × 2560, wool 80 × 80 ÷ 0.92 in; ÷ 1.085 and ÷ 1.17; wool ÷ both",
    2712500 / 99431,
  ],
  // Warp.
  [
    "oldWarp: none, and both wastes",
    `${RUN.replace("{ ends: 160 }", "none").replace(/join.*\n/u, "")}${PIECES}`,
    "warp needed",
    "80 ÷ 0.92 + 10 + 18",
    [2644, 23, "in"],
  ],
  [
    "winding.step: the warp in whole steps",
    napkins.replace("extra:", "step: 27 in, extra:"),
    "warp left",
    "8 × 27 − 4605/23",
    [363, 23, "in"],
  ],
  ["join.perHour: hours of tying", RUN, "tying hours", "160 ÷ 190", 16 / 19],
  // What was found. A napkin is 17.5 ÷ 0.9 = 175/9 in on the loom.
  [
    "found.firstInches: weft with the picks found",
    `${RUN}${PIECES}weft: oat\nfound: { firstInches: { picks: 18 per inch } }\n`,
    "weft 1_oat one",
    "20 × 18 × 8",
    [2880, 1, "in"],
  ],
  ["found.takeUp", "found: { takeUp: 21 in to 19 1/2 in }\n", "found takeUp", "3/2 ÷ 21 in per cent", 100 / 14],
  [
    "found.warpLeft: knots in front of the reed",
    `${napkins}found: { warpLeft: 43 in }\n`,
    "possible entries",
    "43 × 0.92 ÷ (175/9) = 2.03",
    2,
  ],
  [
    "found.warpLeft: behind the heddles, not quite two",
    `${napkins.replace("in front of the reed", "behind the heddles")}found: { warpLeft: 59 in }\n`,
    "possible entries",
    "(59 − 18) × 0.92 ÷ (175/9) = 1.94",
    1,
  ],
  [
    "found.warpLeft: behind the heddles, two",
    `${napkins.replace("in front of the reed", "behind the heddles")}found: { warpLeft: 61 in }\n`,
    "possible entries",
    "(61 − 18) × 0.92 ÷ (175/9) = 2.03",
    2,
  ],
  // Centimetres and tex.
  [
    "per 10 cm, tex, and a length fixed in metres",
    `stripes: 100 moss
loom: { reed: 50 per 10 cm, sley: 2 }
cloth: { picks: 5 per cm, takeUp: 5 % lost, lengthLoomToFinished: 10 % lost }
warp: { length: 3 m, wasteInFront: 25 cm }
join: { knots: in front of the reed }
pieces: [{ number: 2, finishedLength: 90 cm }]
weft: moss
yarns: { moss: { count: 2-ply of 40 tex } }
`,
    "yarn moss mass",
    "(100 × 3 m + 2 × 100 cm × 5 × 10 cm) × 80 g ÷ 1000 m = (300 + 100) × 0.08",
    [32, 1, "g"],
  ],
  [
    "cloth.finishedWidth: without an old warp it says how many ends",
    "stripes: [8 oat, { repeat: the rest, of: [6 rose, 6 oat] }, 8 oat]\noldWarp: none\ncloth: { sett: 16 per inch, finishedWidth: 15 in, widthReedToFinished: 10 % lost }\n",
    "loom ends",
    "15 ÷ 0.9 × 16 = 266.67; 16 + 12 n reaches it with n = 21",
    268,
  ],
];

it.each(rows)("%s", (_, job, path, sum, expected) => {
  const [group = "", ...steps] = path.split(" ");
  const plan = planOf(jobIn(job));
  const found = figureAt(plan, ["figures", group, ...steps.map((step) => step.replace("_", " "))]);
  const value = found?.data.value;
  const told = `${path} = ${sum}: ${JSON.stringify(found?.data.needs)} ${String(found?.data.why)}`;
  if (typeof expected === "number") {
    expect(isQuantity(value) ? Number(value.value) : value, told).toBeCloseTo(expected, 10);
    return;
  }
  const [over, under, unit] = expected;
  if (!isQuantity(value)) throw new Error(told);
  // As exact as a double holds it; the plan itself is held against fractions to 30 digits elsewhere.
  expect((value.in as (unit: unknown) => number)(UNITS[unit]) / (over / under), told).toBeCloseTo(1, 13);
});
