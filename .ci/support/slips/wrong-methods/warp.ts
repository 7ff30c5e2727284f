// Lengths, widths and ends of a warp. Wrong ways with percentages: Jacobs & Gelman 2011, Chen & Rao 2007, teachers'
// pages on prices before a discount; the rest from the trade.
import { sum } from "./sum.js";
import type { Sum } from "./sum.js";

const low = ["percentLost", [6, 8, 9, 11, 13]] as const;
const high = ["percentLost", [10, 7, 12, 15, 5]] as const;

export const warp: readonly Sum[] = [
  sum(
    "warpLength",
    "yards",
    {
      pieces: [null, [8, 6, 9, 12, 5]],
      finishedLength: ["inches", [21, 18.5, 24, 16, 32]],
      hemEachEnd: ["inches", [1, 1.25, 0.75, 1.5, 2]],
      loomToFinished: high,
      takeUp: low,
      loomWaste: ["inches", [30, 27, 33, 24, 36]],
    },
    (p) =>
      ((p.pieces * (p.finishedLength + 2 * p.hemEachEnd)) / (1 - p.loomToFinished) / (1 - p.takeUp) + p.loomWaste) / 36,
    [
      [
        "percentage the wrong way",
        "the take-up added",
        (p) =>
          (((p.pieces * (p.finishedLength + 2 * p.hemEachEnd)) / (1 - p.loomToFinished)) * (1 + p.takeUp) +
            p.loomWaste) /
          36,
      ],
      [
        "percentage the wrong way",
        "the shrinkage taken off",
        (p) =>
          ((p.pieces * (p.finishedLength + 2 * p.hemEachEnd) * (1 - p.loomToFinished)) / (1 - p.takeUp) + p.loomWaste) /
          36,
      ],
      [
        "percentage the wrong way",
        "divided by 1 + shrinkage",
        (p) =>
          ((p.pieces * (p.finishedLength + 2 * p.hemEachEnd)) / (1 + p.loomToFinished) / (1 - p.takeUp) + p.loomWaste) /
          36,
      ],
      [
        "percentage left out",
        "the take-up forgotten",
        (p) => ((p.pieces * (p.finishedLength + 2 * p.hemEachEnd)) / (1 - p.loomToFinished) + p.loomWaste) / 36,
      ],
      [
        "percentage left out",
        "both forgotten",
        (p) => (p.pieces * (p.finishedLength + 2 * p.hemEachEnd) + p.loomWaste) / 36,
      ],
      [
        "several percentages",
        "both added in turn",
        (p) =>
          (p.pieces * (p.finishedLength + 2 * p.hemEachEnd) * (1 + p.loomToFinished) * (1 + p.takeUp) + p.loomWaste) /
          36,
      ],
      [
        "several percentages",
        "summed and added",
        (p) =>
          (p.pieces * (p.finishedLength + 2 * p.hemEachEnd) * (1 + p.loomToFinished + p.takeUp) + p.loomWaste) / 36,
      ],
      [
        "several percentages",
        "summed and divided out",
        (p) =>
          ((p.pieces * (p.finishedLength + 2 * p.hemEachEnd)) / (1 - p.loomToFinished - p.takeUp) + p.loomWaste) / 36,
      ],
      [
        "reach",
        "waste before the percentages",
        (p) =>
          (p.pieces * (p.finishedLength + 2 * p.hemEachEnd) + p.loomWaste) /
          (1 - p.loomToFinished) /
          (1 - p.takeUp) /
          36,
      ],
      [
        "reach",
        "take-up on the waste too",
        (p) =>
          ((p.pieces * (p.finishedLength + 2 * p.hemEachEnd)) / (1 - p.loomToFinished) + p.loomWaste) /
          (1 - p.takeUp) /
          36,
      ],
      [
        "reach",
        "waste for every piece",
        (p) =>
          ((p.pieces * (p.finishedLength + 2 * p.hemEachEnd)) / (1 - p.loomToFinished) / (1 - p.takeUp) +
            p.pieces * p.loomWaste) /
          36,
      ],
      [
        "term left out or wrong",
        "no hems",
        (p) => ((p.pieces * p.finishedLength) / (1 - p.loomToFinished) / (1 - p.takeUp) + p.loomWaste) / 36,
      ],
      [
        "term left out or wrong",
        "one hem a piece",
        (p) =>
          ((p.pieces * (p.finishedLength + p.hemEachEnd)) / (1 - p.loomToFinished) / (1 - p.takeUp) + p.loomWaste) / 36,
      ],
      [
        "term left out or wrong",
        "no waste",
        (p) => (p.pieces * (p.finishedLength + 2 * p.hemEachEnd)) / (1 - p.loomToFinished) / (1 - p.takeUp) / 36,
      ],
      [
        "unit of length or mass",
        "left in feet",
        (p) =>
          ((p.pieces * (p.finishedLength + 2 * p.hemEachEnd)) / (1 - p.loomToFinished) / (1 - p.takeUp) + p.loomWaste) /
          12,
      ],
      [
        "factor left out or turned over",
        "one piece only",
        (p) => ((p.finishedLength + 2 * p.hemEachEnd) / (1 - p.loomToFinished) / (1 - p.takeUp) + p.loomWaste) / 36,
      ],
    ],
  ),
  sum(
    "warpLengthByAdding",
    "yards",
    {
      pieces: [null, [4, 7, 6, 10]],
      finishedLength: ["inches", [20, 26, 17.5, 30]],
      hemEachEnd: ["inches", [1.5, 1, 0.5, 2]],
      shrinkage: ["percentAdded", [10, 8, 12, 9]],
      takeUp: ["percentAdded", [7, 10, 5, 11]],
      loomWaste: ["inches", [27, 36, 24, 30]],
    },
    (p) => (p.pieces * (p.finishedLength + 2 * p.hemEachEnd) * (1 + p.shrinkage + p.takeUp) + p.loomWaste) / 36,
    [
      [
        "several percentages",
        "one after the other",
        (p) =>
          (p.pieces * (p.finishedLength + 2 * p.hemEachEnd) * (1 + p.shrinkage) * (1 + p.takeUp) + p.loomWaste) / 36,
      ],
      [
        "several percentages",
        "divided out one after the other",
        (p) =>
          ((p.pieces * (p.finishedLength + 2 * p.hemEachEnd)) / (1 - p.shrinkage) / (1 - p.takeUp) + p.loomWaste) / 36,
      ],
      [
        "percentage left out",
        "the shrinkage forgotten",
        (p) => (p.pieces * (p.finishedLength + 2 * p.hemEachEnd) * (1 + p.takeUp) + p.loomWaste) / 36,
      ],
      [
        "term left out or wrong",
        "no hems",
        (p) => (p.pieces * p.finishedLength * (1 + p.shrinkage + p.takeUp) + p.loomWaste) / 36,
      ],
      [
        "reach",
        "hems not shrunk",
        (p) => (p.pieces * (p.finishedLength * (1 + p.shrinkage + p.takeUp) + 2 * p.hemEachEnd) + p.loomWaste) / 36,
      ],
      [
        "reach",
        "percentages on the waste too",
        (p) => ((p.pieces * (p.finishedLength + 2 * p.hemEachEnd) + p.loomWaste) * (1 + p.shrinkage + p.takeUp)) / 36,
      ],
      [
        "term left out or wrong",
        "no waste",
        (p) => (p.pieces * (p.finishedLength + 2 * p.hemEachEnd) * (1 + p.shrinkage + p.takeUp)) / 36,
      ],
    ],
  ),
  sum(
    "wovenLength",
    "inches",
    { finishedLength: ["inches", [21, 19.5, 33, 47]], hemEachEnd: ["inches", [1, 1.5, 0.75, 2]], loomToFinished: high },
    (p) => (p.finishedLength + 2 * p.hemEachEnd) / (1 - p.loomToFinished),
    [
      ["percentage the wrong way", "added", (p) => (p.finishedLength + 2 * p.hemEachEnd) * (1 + p.loomToFinished)],
      ["percentage the wrong way", "taken off", (p) => (p.finishedLength + 2 * p.hemEachEnd) * (1 - p.loomToFinished)],
      ["percentage left out", "forgotten", (p) => p.finishedLength + 2 * p.hemEachEnd],
      ["part, rest or base", "only the part lost", (p) => (p.finishedLength + 2 * p.hemEachEnd) * p.loomToFinished],
      ["term left out or wrong", "one hem", (p) => (p.finishedLength + p.hemEachEnd) / (1 - p.loomToFinished)],
      ["reach", "hems added after shrinking", (p) => p.finishedLength / (1 - p.loomToFinished) + 2 * p.hemEachEnd],
    ],
  ),
  sum(
    "widthInReedFromFinished",
    "inches",
    { finishedWidth: ["inches", [18, 22, 27.5, 34]], reedToFinished: high },
    (p) => p.finishedWidth / (1 - p.reedToFinished),
    [
      ["percentage the wrong way", "added", (p) => p.finishedWidth * (1 + p.reedToFinished)],
      ["percentage the wrong way", "taken off", (p) => p.finishedWidth * (1 - p.reedToFinished)],
      ["percentage the wrong way", "divided by 1 + p", (p) => p.finishedWidth / (1 + p.reedToFinished)],
      ["part, rest or base", "only the part lost", (p) => p.finishedWidth * p.reedToFinished],
      ["unit of length or mass", "centimetres given", (p) => (p.finishedWidth / (1 - p.reedToFinished)) * 2.54],
    ],
  ),
  sum(
    "finishedWidthFromEnds",
    "inches",
    { ends: [null, [440, 372, 518, 296]], sett: ["endsPerInch", [20, 16, 24, 15]], reedToFinished: low },
    (p) => (p.ends / p.sett) * (1 - p.reedToFinished),
    [
      ["percentage the wrong way", "divided out", (p) => p.ends / p.sett / (1 - p.reedToFinished)],
      ["percentage the wrong way", "added", (p) => (p.ends / p.sett) * (1 + p.reedToFinished)],
      ["percentage left out", "forgotten", (p) => p.ends / p.sett],
      ["factor left out or turned over", "sett over ends", (p) => (p.sett / p.ends) * (1 - p.reedToFinished)],
      ["part, rest or base", "only the part lost", (p) => (p.ends / p.sett) * p.reedToFinished],
    ],
  ),
  sum(
    "combinedLoss",
    "percentLost",
    { first: ["percentLost", [5, 8, 6, 10]], second: ["percentLost", [12, 9, 15, 7]] },
    (p) => 100 * (1 - (1 - p.first) * (1 - p.second)),
    [
      ["several percentages", "added", (p) => 100 * (p.first + p.second)],
      ["part, rest or base", "what is left", (p) => 100 * (1 - p.first) * (1 - p.second)],
      ["several percentages", "product of the two", (p) => 100 * p.first * p.second],
      ["part, rest or base", "as a fraction", (p) => 1 - (1 - p.first) * (1 - p.second)],
      ["several percentages", "as if both were added on", (p) => 100 * ((1 + p.first) * (1 + p.second) - 1)],
      ["list", "the mean of the two", (p) => 50 * (p.first + p.second)],
    ],
  ),
  sum(
    "lossFromMeasures",
    "percentLost",
    { before: ["inches", [24, 33, 41, 28.5]], after: ["inches", [21.5, 30, 36, 26]] },
    (p) => (100 * (p.before - p.after)) / p.before,
    [
      ["part, rest or base", "on the shorter measure", (p) => (100 * (p.before - p.after)) / p.after],
      ["part, rest or base", "what is left", (p) => (100 * p.after) / p.before],
      ["part, rest or base", "before over after", (p) => (100 * p.before) / p.after],
      ["part, rest or base", "as a fraction", (p) => (p.before - p.after) / p.before],
      ["a line for the answer", "the difference itself", (p) => p.before - p.after],
    ],
  ),
  sum(
    "crimpFromMeasures",
    "percentAdded",
    { threadLength: ["inches", [10.8, 22.5, 37, 13.4]], clothLength: ["inches", [10, 20, 34, 12]] },
    (p) => (100 * (p.threadLength - p.clothLength)) / p.clothLength,
    [
      ["part, rest or base", "on the thread", (p) => (100 * (p.threadLength - p.clothLength)) / p.threadLength],
      ["part, rest or base", "thread over cloth", (p) => (100 * p.threadLength) / p.clothLength],
      ["part, rest or base", "cloth over thread", (p) => (100 * p.clothLength) / p.threadLength],
      ["part, rest or base", "as a fraction", (p) => (p.threadLength - p.clothLength) / p.clothLength],
    ],
  ),
  sum(
    "crimpFromTakeUp",
    "percentAdded",
    { takeUp: ["percentLost", [8, 11, 6, 14]] },
    (p) => (100 * p.takeUp) / (1 - p.takeUp),
    [
      ["percentage the wrong way", "divided by 1 + p", (p) => (100 * p.takeUp) / (1 + p.takeUp)],
      ["percentage the wrong way", "times 1 − p", (p) => 100 * p.takeUp * (1 - p.takeUp)],
      ["percentage the wrong way", "times 1 + p", (p) => 100 * p.takeUp * (1 + p.takeUp)],
      ["part, rest or base", "as a fraction", (p) => p.takeUp / (1 - p.takeUp)],
    ],
  ),
  sum(
    "threadForCloth",
    "inches",
    { clothLength: ["inches", [48, 65, 90, 37]], crimp: ["percentAdded", [7, 12, 9, 15]] },
    (p) => p.clothLength * (1 + p.crimp),
    [
      ["percentage the wrong way", "divided by 1 − p", (p) => p.clothLength / (1 - p.crimp)],
      ["percentage the wrong way", "taken off", (p) => p.clothLength * (1 - p.crimp)],
      ["percentage the wrong way", "divided by 1 + p", (p) => p.clothLength / (1 + p.crimp)],
      ["part, rest or base", "only the part", (p) => p.clothLength * p.crimp],
    ],
  ),
  sum(
    "sizedMass",
    "pounds",
    { unsizedMass: ["pounds", [14, 23, 36, 8.5]], size: ["percentAdded", [12, 8, 15, 9]] },
    (p) => p.unsizedMass * (1 + p.size),
    [
      ["percentage the wrong way", "divided by 1 − p", (p) => p.unsizedMass / (1 - p.size)],
      ["percentage the wrong way", "taken off", (p) => p.unsizedMass * (1 - p.size)],
      ["part, rest or base", "only the size", (p) => p.unsizedMass * p.size],
      ["unit of length or mass", "ounces", (p) => p.unsizedMass * (1 + p.size) * 16],
    ],
  ),
  sum(
    "warpMass",
    "pounds",
    {
      ends: [null, [440, 560, 384, 612]],
      warpLength: ["yards", [7, 9.5, 11, 6]],
      count: ["cottonCount", [8, 10, 12, 16]],
      allowance: ["percentAdded", [5, 8, 10, 3]],
    },
    (p) => ((p.ends * p.warpLength) / (p.count * 840)) * (1 + p.allowance),
    [
      ["trade constant", "the worsted hank", (p) => ((p.ends * p.warpLength) / (p.count * 560)) * (1 + p.allowance)],
      ["trade constant", "the linen lea", (p) => ((p.ends * p.warpLength) / (p.count * 300)) * (1 + p.allowance)],
      ["trade constant", "times the count", (p) => ((p.ends * p.warpLength * p.count) / 840) * (1 + p.allowance)],
      ["trade constant", "no hank", (p) => ((p.ends * p.warpLength) / p.count) * (1 + p.allowance)],
      [
        "percentage the wrong way",
        "waste divided out",
        (p) => (p.ends * p.warpLength) / (p.count * 840) / (1 - p.allowance),
      ],
      [
        "percentage the wrong way",
        "waste taken off",
        (p) => ((p.ends * p.warpLength) / (p.count * 840)) * (1 - p.allowance),
      ],
      ["percentage left out", "waste forgotten", (p) => (p.ends * p.warpLength) / (p.count * 840)],
      ["unit of length or mass", "ounces", (p) => ((p.ends * p.warpLength) / (p.count * 840)) * (1 + p.allowance) * 16],
      ["factor left out or turned over", "no count", (p) => ((p.ends * p.warpLength) / 840) * (1 + p.allowance)],
      [
        "rounding or one off",
        "one end too many",
        (p) => (((p.ends + 1) * p.warpLength) / (p.count * 840)) * (1 + p.allowance),
      ],
    ],
  ),
  sum(
    "piecesFromWarp",
    null,
    {
      warpLeft: ["inches", [252, 310, 198, 415]],
      loomWaste: ["inches", [30, 24, 27, 36]],
      takeUp: low,
      wovenLength: ["inches", [19, 16, 22, 27]],
    },
    (p) => Math.floor(((p.warpLeft - p.loomWaste) * (1 - p.takeUp)) / p.wovenLength),
    [
      [
        "percentage the wrong way",
        "divided out",
        (p) => Math.floor((p.warpLeft - p.loomWaste) / (1 - p.takeUp) / p.wovenLength),
      ],
      ["percentage left out", "forgotten", (p) => Math.floor((p.warpLeft - p.loomWaste) / p.wovenLength)],
      ["term left out or wrong", "no waste", (p) => Math.floor((p.warpLeft * (1 - p.takeUp)) / p.wovenLength)],
      [
        "term left out or wrong",
        "waste added",
        (p) => Math.floor(((p.warpLeft + p.loomWaste) * (1 - p.takeUp)) / p.wovenLength),
      ],
      [
        "rounding or one off",
        "rounded up",
        (p) => Math.ceil(((p.warpLeft - p.loomWaste) * (1 - p.takeUp)) / p.wovenLength),
      ],
    ],
    true,
  ),
  sum(
    "endsForWidth",
    null,
    {
      sett: ["endsPerInch", [20, 18, 24, 15]],
      widthInReed: ["inches", [22, 19.5, 26, 31]],
      threadingRepeat: [null, [8, 12, 10, 16]],
      balanceEnds: [null, [1, 5, 3, 9]],
    },
    (p) => Math.ceil((p.sett * p.widthInReed - p.balanceEnds) / p.threadingRepeat) * p.threadingRepeat + p.balanceEnds,
    [
      ["a line for the answer", "sett by width only", (p) => p.sett * p.widthInReed],
      [
        "term left out or wrong",
        "no balance ends",
        (p) => Math.ceil((p.sett * p.widthInReed - p.balanceEnds) / p.threadingRepeat) * p.threadingRepeat,
      ],
      [
        "rounding or one off",
        "repeats rounded down",
        (p) =>
          Math.floor((p.sett * p.widthInReed - p.balanceEnds) / p.threadingRepeat) * p.threadingRepeat + p.balanceEnds,
      ],
      [
        "rounding or one off",
        "one repeat too many",
        (p) =>
          (Math.ceil((p.sett * p.widthInReed - p.balanceEnds) / p.threadingRepeat) + 1) * p.threadingRepeat +
          p.balanceEnds,
      ],
      [
        "a line for the answer",
        "the number of repeats",
        (p) => Math.ceil((p.sett * p.widthInReed - p.balanceEnds) / p.threadingRepeat),
      ],
    ],
    true,
  ),
  sum(
    "endsWithSelvedges",
    null,
    { bodyEnds: [null, [440, 372, 516]], endsEachSelvedge: [null, [6, 8, 10]], floatingEnds: [null, [2, 4, 1]] },
    (p) => p.bodyEnds + 2 * p.endsEachSelvedge + p.floatingEnds,
    [
      ["term left out or wrong", "one selvedge", (p) => p.bodyEnds + p.endsEachSelvedge + p.floatingEnds],
      ["term left out or wrong", "no floating ends", (p) => p.bodyEnds + 2 * p.endsEachSelvedge],
      ["term left out or wrong", "no selvedges", (p) => p.bodyEnds + p.floatingEnds],
      ["reach", "floating ends at each side", (p) => p.bodyEnds + 2 * (p.endsEachSelvedge + p.floatingEnds)],
      ["term left out or wrong", "selvedges taken off", (p) => p.bodyEnds - 2 * p.endsEachSelvedge + p.floatingEnds],
    ],
    true,
  ),
  sum(
    "spoolLength",
    "yards",
    { sections: [null, [12, 9, 15]], warpLength: ["yards", [8, 11.5, 6]], cutWaste: ["inches", [18, 12, 24]] },
    (p) => p.sections * (p.warpLength + p.cutWaste / 36),
    [
      ["reach", "waste once", (p) => p.sections * p.warpLength + p.cutWaste / 36],
      ["term left out or wrong", "no waste", (p) => p.sections * p.warpLength],
      ["unit of length or mass", "inches taken for yards", (p) => p.sections * (p.warpLength + p.cutWaste)],
      ["term left out or wrong", "waste taken off", (p) => p.sections * (p.warpLength - p.cutWaste / 36)],
      ["unit of length or mass", "inches by twelve", (p) => p.sections * (p.warpLength + p.cutWaste / 12)],
    ],
  ),
  sum(
    "extraYarnOfTurn",
    "yards",
    {
      ends: [null, [340, 276, 412]],
      turns: [null, [5, 7, 4]],
      measuredTurn: ["inches", [73.5, 36.75, 55.25]],
      nominalTurn: ["inches", [72, 36, 54]],
    },
    (p) => (p.ends * p.turns * (p.measuredTurn - p.nominalTurn)) / 36,
    [
      ["factor left out or turned over", "no turns", (p) => (p.ends * (p.measuredTurn - p.nominalTurn)) / 36],
      ["a line for the answer", "one end", (p) => (p.turns * (p.measuredTurn - p.nominalTurn)) / 36],
      ["unit of length or mass", "left in inches", (p) => p.ends * p.turns * (p.measuredTurn - p.nominalTurn)],
      ["term left out or wrong", "the whole turn", (p) => (p.ends * p.turns * p.measuredTurn) / 36],
    ],
  ),
];
