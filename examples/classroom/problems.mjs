// Five sums for a class about napkins for a village hall. Four are made from a seed, so that a wrong number tells which slip
// was made; print another seed for another class. A count in whole repeats hides slips whatever its numbers: that one is ours.
import {
  cottonCount,
  endsForWidth,
  endsPerInch,
  inches,
  percentAdded,
  percentLost,
  picksPerInch,
  pounds,
  problem,
  warpLength,
  warpMass,
  weftLength,
  widthInReed,
  yards,
} from "@thrum/maths";

const made = [
  {
    asks: "How wide are the napkins in the reed?",
    hint: "The percentage was measured on the width in the reed: what is left of it is the finished width.",
    calculation: widthInReed,
    like: { finishedWidth: inches(18), reedToFinished: percentLost(10) },
    unit: inches,
    decimals: 2,
  },
  {
    asks: "How long is the warp for the napkins?",
    hint: "Work from the finished napkin back to the loom, and add the waste last.",
    calculation: warpLength,
    like: {
      pieces: 8,
      finishedLength: inches(21),
      hemEachEnd: inches("1.5"),
      loomToFinished: percentLost(10),
      takeUp: percentLost(8),
      loomWaste: inches(30),
    },
    unit: yards,
    decimals: 3,
  },
  {
    asks: "What does the yarn of the warp weigh?",
    hint: "The cotton count says how many hanks of 840 yd go to the pound.",
    calculation: warpMass,
    like: { ends: 305, warpLength: yards(7), count: cottonCount(4), waste: percentAdded(5) },
    unit: pounds,
    decimals: 4,
  },
  {
    asks: "How much weft is laid straight?",
    hint: "Count the picks first; each is as long as the reed is wide.",
    calculation: weftLength,
    like: { wovenLength: inches(204), picks: picksPerInch(14), widthInReed: inches(20) },
    unit: yards,
    decimals: 2,
  },
];

const wholeRepeats = {
  asks: "How many ends are wound, in whole repeats?",
  given: [
    "width in reed: 20 in",
    "sett: 15 ends per inch in the reed",
    "threading repeat: 8 ends",
    "balance ends: 1, after the last repeat",
  ],
  rounding: "as a whole number",
  hint: "Take the balancing end away first, then count whole repeats upwards.",
  calculation: endsForWidth,
  input: { sett: endsPerInch(15), widthInReed: inches(20), threadingRepeat: 8, balanceEnds: 1 },
  unit: null,
};

/** The five sums of one sheet. */
export function problemsOf(seed) {
  const sums = made.map(({ asks, hint, calculation, ...wanted }) => {
    const { input, unit, question, key } = problem(calculation, { ...wanted, seed });
    const given = question.inputs.map(({ name, value, meaning }) => `${name}: ${value}, ${meaning}`);
    return { asks, hint, calculation, input, unit, given, rounding: question.rounding, question, key };
  });
  return [...sums.slice(0, 1), wholeRepeats, ...sums.slice(1)];
}
