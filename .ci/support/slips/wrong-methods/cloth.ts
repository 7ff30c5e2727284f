// Mass and cover of cloth, setts and weft. Linear for square: De Bock et al. 2002; the rest from the trade.
import { sum } from "./sum.js";
import type { Sum } from "./sum.js";

const sett = ["endsPerInch", [20, 16, 24, 30]] as const;

export const cloth: readonly Sum[] = [
  sum(
    "clothMassPerArea",
    "ouncesPerSquareYard",
    {
      sett,
      picks: ["picksPerInch", [18, 15, 22, 28]],
      warpCount: ["cottonCount", [8, 5, 10, 12]],
      weftCount: ["cottonCount", [10, 6, 8, 16]],
      warpCrimp: ["percentAdded", [7, 9, 6, 12]],
      weftCrimp: ["percentAdded", [5, 8, 10, 4]],
    },
    (p) =>
      ((p.sett * 36 * (1 + p.warpCrimp)) / (p.warpCount * 840) +
        (p.picks * 36 * (1 + p.weftCrimp)) / (p.weftCount * 840)) *
      16,
    [
      [
        "trade constant",
        "560 for both",
        (p) =>
          ((p.sett * 36 * (1 + p.warpCrimp)) / (p.warpCount * 560) +
            (p.picks * 36 * (1 + p.weftCrimp)) / (p.weftCount * 560)) *
          16,
      ],
      [
        "unit of length or mass",
        "pounds called ounces",
        (p) =>
          (p.sett * 36 * (1 + p.warpCrimp)) / (p.warpCount * 840) +
          (p.picks * 36 * (1 + p.weftCrimp)) / (p.weftCount * 840),
      ],
      [
        "unit of length or mass",
        "one inch of threads",
        (p) =>
          ((p.sett * (1 + p.warpCrimp)) / (p.warpCount * 840) + (p.picks * (1 + p.weftCrimp)) / (p.weftCount * 840)) *
          16,
      ],
      [
        "percentage left out",
        "both crimps forgotten",
        (p) => ((p.sett * 36) / (p.warpCount * 840) + (p.picks * 36) / (p.weftCount * 840)) * 16,
      ],
      [
        "percentage left out",
        "warp crimp forgotten",
        (p) => ((p.sett * 36) / (p.warpCount * 840) + (p.picks * 36 * (1 + p.weftCrimp)) / (p.weftCount * 840)) * 16,
      ],
      [
        "percentage the wrong way",
        "both divided out",
        (p) =>
          ((p.sett * 36) / (1 - p.warpCrimp) / (p.warpCount * 840) +
            (p.picks * 36) / (1 - p.weftCrimp) / (p.weftCount * 840)) *
          16,
      ],
      [
        "name for name",
        "sett and picks exchanged",
        (p) =>
          ((p.picks * 36 * (1 + p.warpCrimp)) / (p.warpCount * 840) +
            (p.sett * 36 * (1 + p.weftCrimp)) / (p.weftCount * 840)) *
          16,
      ],
      [
        "name for name",
        "one count for both",
        (p) =>
          ((p.sett * 36 * (1 + p.warpCrimp)) / (p.warpCount * 840) +
            (p.picks * 36 * (1 + p.weftCrimp)) / (p.warpCount * 840)) *
          16,
      ],
      [
        "term left out or wrong",
        "the weft forgotten",
        (p) => ((p.sett * 36 * (1 + p.warpCrimp)) / (p.warpCount * 840)) * 16,
      ],
      [
        "term left out or wrong",
        "the warp forgotten",
        (p) => ((p.picks * 36 * (1 + p.weftCrimp)) / (p.weftCount * 840)) * 16,
      ],
    ],
  ),
  sum(
    "warpMassPerArea",
    "gramsPerSquareMetre",
    {
      sett: ["endsPerCentimetre", [8, 10, 6.5, 12]],
      count: ["metricCount", [14, 20, 8, 17]],
      crimp: ["percentAdded", [7, 9, 5, 11]],
    },
    (p) => (p.sett * 100 * (1 + p.crimp)) / p.count,
    [
      ["trade constant", "times the count", (p) => p.sett * 100 * (1 + p.crimp) * p.count],
      ["unit of length or mass", "not to the metre", (p) => (p.sett * (1 + p.crimp)) / p.count],
      ["percentage the wrong way", "divided out", (p) => (p.sett * 100) / (1 - p.crimp) / p.count],
      ["percentage left out", "forgotten", (p) => (p.sett * 100) / p.count],
      [
        "unit of length or mass",
        "ends to the inch read as to the centimetre",
        (p) => (p.sett * 2.54 * 100 * (1 + p.crimp)) / p.count,
      ],
    ],
  ),
  sum(
    "pieceMass",
    "ounces",
    { warp: ["ounces", [24, 37, 52]], size: ["percentAdded", [10, 8, 14]], weft: ["ounces", [20, 31, 46]] },
    (p) => p.warp * (1 + p.size) + p.weft,
    [
      ["reach", "size on the weft too", (p) => (p.warp + p.weft) * (1 + p.size)],
      ["percentage left out", "no size", (p) => p.warp + p.weft],
      ["percentage the wrong way", "size divided out", (p) => p.warp / (1 - p.size) + p.weft],
      ["percentage the wrong way", "size taken off", (p) => p.warp * (1 - p.size) + p.weft],
      ["reach", "size on the weft only", (p) => p.warp + p.weft * (1 + p.size)],
    ],
  ),
  sum(
    "totalCover",
    "percentOf",
    { warpCover: ["percentOf", [55, 62, 48]], weftCover: ["percentOf", [42, 35, 57]] },
    (p) => 100 * (p.warpCover + p.weftCover - p.warpCover * p.weftCover),
    [
      ["term left out or wrong", "added", (p) => 100 * (p.warpCover + p.weftCover)],
      ["part, rest or base", "the product", (p) => 100 * p.warpCover * p.weftCover],
      ["part, rest or base", "the open part", (p) => 100 * (1 - p.warpCover) * (1 - p.weftCover)],
      ["term left out or wrong", "product added", (p) => 100 * (p.warpCover + p.weftCover + p.warpCover * p.weftCover)],
      ["part, rest or base", "as a fraction", (p) => p.warpCover + p.weftCover - p.warpCover * p.weftCover],
    ],
  ),
  sum(
    "coverFactorByPeirce",
    null,
    { threads: ["endsPerInch", [48, 36, 60]], count: ["cottonCount", [20, 14, 30]] },
    (p) => p.threads / Math.sqrt(p.count),
    [
      ["root or square", "no root", (p) => p.threads / p.count],
      ["root or square", "times the root", (p) => p.threads * Math.sqrt(p.count)],
      ["root or square", "root of the whole", (p) => Math.sqrt(p.threads / p.count)],
      ["factor left out or turned over", "turned over", (p) => Math.sqrt(p.count) / p.threads],
    ],
  ),
  sum(
    "settForCount",
    "endsPerInch",
    { sett, count: ["cottonCount", [16, 10, 20, 30]], newCount: ["cottonCount", [24, 16, 12, 40]] },
    (p) => p.sett * Math.sqrt(p.newCount / p.count),
    [
      ["root or square", "no root", (p) => (p.sett * p.newCount) / p.count],
      ["root or square", "counts upside down", (p) => p.sett * Math.sqrt(p.count / p.newCount)],
      ["root or square", "squared", (p) => p.sett * (p.newCount / p.count) ** 2],
      ["root or square", "halved for the root", (p) => (p.sett * p.newCount) / p.count / 2],
      ["root or square", "root of the whole", (p) => Math.sqrt((p.sett * p.newCount) / p.count)],
    ],
  ),
  sum(
    "countForSett",
    "cottonCount",
    {
      count: ["cottonCount", [16, 10, 20]],
      sett: ["endsPerInch", [20, 16, 24]],
      newSett: ["endsPerInch", [26, 18, 30]],
    },
    (p) => p.count * (p.newSett / p.sett) ** 2,
    [
      ["root or square", "no square", (p) => (p.count * p.newSett) / p.sett],
      ["root or square", "doubled for the square", (p) => (p.count * 2 * p.newSett) / p.sett],
      ["factor left out or turned over", "setts upside down", (p) => p.count * (p.sett / p.newSett) ** 2],
      ["root or square", "the root", (p) => p.count * Math.sqrt(p.newSett / p.sett)],
      ["a line for the answer", "the ratio", (p) => p.newSett / p.sett],
    ],
  ),
  sum(
    "settByIntersections",
    "endsPerInch",
    { diameters: ["diametersPerInch", [60, 74, 52]], ends: [null, [4, 8, 3]], intersections: [null, [2, 3, 2]] },
    (p) => (p.diameters * p.ends) / (p.ends + p.intersections),
    [
      ["term left out or wrong", "intersections taken off", (p) => (p.diameters * p.ends) / (p.ends - p.intersections)],
      [
        "name for name",
        "intersections over the whole",
        (p) => (p.diameters * p.intersections) / (p.ends + p.intersections),
      ],
      ["factor left out or turned over", "turned over", (p) => (p.diameters * (p.ends + p.intersections)) / p.ends],
      ["factor left out or turned over", "weave left out", (p) => p.diameters],
      ["term left out or wrong", "ends over intersections", (p) => (p.diameters * p.ends) / p.intersections],
    ],
  ),
  sum(
    "settForWeave",
    "endsPerInch",
    {
      sett,
      ends: [null, [2, 4, 3, 2]],
      intersections: [null, [2, 2, 2, 2]],
      newEnds: [null, [4, 8, 8, 5]],
      newIntersections: [null, [2, 2, 4, 2]],
    },
    (p) => (p.sett * p.newEnds * (p.ends + p.intersections)) / ((p.newEnds + p.newIntersections) * p.ends),
    [
      [
        "factor left out or turned over",
        "weaves exchanged",
        (p) => (p.sett * (p.newEnds + p.newIntersections) * p.ends) / (p.newEnds * (p.ends + p.intersections)),
      ],
      [
        "factor left out or turned over",
        "old weave left out",
        (p) => (p.sett * p.newEnds) / (p.newEnds + p.newIntersections),
      ],
      ["term left out or wrong", "intersections left out", (p) => (p.sett * p.newEnds) / p.ends],
      [
        "root or square",
        "root of the weaves",
        (p) =>
          p.sett * Math.sqrt((p.newEnds * (p.ends + p.intersections)) / ((p.newEnds + p.newIntersections) * p.ends)),
      ],
    ],
  ),
  sum(
    "settByWraps",
    "endsPerInch",
    {
      wraps: [null, [30, 22, 36]],
      width: ["inches", [1, 2, 1.5]],
      ends: [null, [4, 3, 8]],
      intersections: [null, [2, 2, 3]],
    },
    (p) => ((p.wraps / p.width) * p.ends) / (p.ends + p.intersections),
    [
      ["factor left out or turned over", "weave left out", (p) => p.wraps / p.width],
      ["factor left out or turned over", "halved as for plain weave", (p) => p.wraps / p.width / 2],
      ["term left out or wrong", "intersections left out", (p) => (p.wraps * p.ends) / p.width / p.intersections],
      [
        "unit of length or mass",
        "to the centimetre",
        (p) => ((p.wraps / p.width / 2.54) * p.ends) / (p.ends + p.intersections),
      ],
    ],
  ),
  sum(
    "settForWeight",
    "endsPerInch",
    { sett, mass: ["ounces", [24, 30, 18, 40]], newMass: ["ounces", [20, 36, 21, 34]] },
    (p) => (p.sett * p.mass) / p.newMass,
    [
      ["factor left out or turned over", "weights upside down", (p) => (p.sett * p.newMass) / p.mass],
      ["root or square", "a root", (p) => p.sett * Math.sqrt(p.mass / p.newMass)],
      ["root or square", "a square", (p) => p.sett * (p.mass / p.newMass) ** 2],
      ["term left out or wrong", "the difference", (p) => p.sett + p.mass - p.newMass],
    ],
  ),
  sum(
    "weftMass",
    "pounds",
    {
      wovenLength: ["inches", [190, 236, 152]],
      picks: ["picksPerInch", [18, 22, 15]],
      widthInReed: ["inches", [22, 19.5, 27]],
      count: ["cottonCount", [8, 10, 6]],
      allowance: ["percentAdded", [8, 12, 5]],
    },
    (p) => ((p.wovenLength * p.picks * p.widthInReed) / 36 / (p.count * 840)) * (1 + p.allowance),
    [
      [
        "unit of length or mass",
        "inches as yards",
        (p) => ((p.wovenLength * p.picks * p.widthInReed) / (p.count * 840)) * (1 + p.allowance),
      ],
      [
        "unit of length or mass",
        "by 36 twice",
        (p) => ((p.wovenLength * p.picks * p.widthInReed) / 1296 / (p.count * 840)) * (1 + p.allowance),
      ],
      [
        "trade constant",
        "560 yards",
        (p) => ((p.wovenLength * p.picks * p.widthInReed) / 36 / (p.count * 560)) * (1 + p.allowance),
      ],
      [
        "factor left out or turned over",
        "width left out",
        (p) => ((p.wovenLength * p.picks) / 36 / (p.count * 840)) * (1 + p.allowance),
      ],
      ["percentage left out", "forgotten", (p) => (p.wovenLength * p.picks * p.widthInReed) / 36 / (p.count * 840)],
      [
        "percentage the wrong way",
        "divided out",
        (p) => (p.wovenLength * p.picks * p.widthInReed) / 36 / (p.count * 840) / (1 - p.allowance),
      ],
      [
        "trade constant",
        "times the count",
        (p) => ((p.wovenLength * p.picks * p.widthInReed) / 36 / 840) * p.count * (1 + p.allowance),
      ],
      [
        "unit of length or mass",
        "ounces",
        (p) => ((p.wovenLength * p.picks * p.widthInReed) / 36 / (p.count * 840)) * (1 + p.allowance) * 16,
      ],
    ],
  ),
  sum(
    "weftLength",
    "yards",
    {
      wovenLength: ["inches", [190, 236, 152]],
      picks: ["picksPerInch", [18, 22, 15]],
      widthInReed: ["inches", [22, 19.5, 27]],
    },
    (p) => (p.wovenLength * p.picks * p.widthInReed) / 36,
    [
      ["unit of length or mass", "left in inches", (p) => p.wovenLength * p.picks * p.widthInReed],
      ["factor left out or turned over", "length left out", (p) => (p.picks * p.widthInReed) / 36],
      [
        "factor left out or turned over",
        "divided by the picks",
        (p) => ((p.wovenLength / p.picks) * p.widthInReed) / 36,
      ],
      ["a line for the answer", "number of picks", (p) => p.wovenLength * p.picks],
      ["unit of length or mass", "to feet", (p) => (p.wovenLength * p.picks * p.widthInReed) / 12],
    ],
  ),
  sum(
    "picksAtLoom",
    "picksPerInch",
    { picksFinished: ["picksPerInch", [20, 25, 34]], loomToFinished: ["percentLost", [8, 11, 6]] },
    (p) => p.picksFinished * (1 - p.loomToFinished),
    [
      ["percentage the wrong way", "added", (p) => p.picksFinished * (1 + p.loomToFinished)],
      ["percentage the wrong way", "divided out", (p) => p.picksFinished / (1 - p.loomToFinished)],
      ["percentage the wrong way", "divided by 1 + p", (p) => p.picksFinished / (1 + p.loomToFinished)],
      ["part, rest or base", "only the part", (p) => p.picksFinished * p.loomToFinished],
    ],
  ),
];
