// Five sums of one warp for a class: napkins for a village hall. They are drawn from a seed, and each hands its answer to the
// next; print another seed for another class.
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
  widthInReedFromFinished,
  wovenLength,
  yards,
} from "@thrum/maths";

function told({ asks, hint, calculation }, made) {
  const { question, ...rest } = made;
  const given = question.inputs.map(({ name, value, meaning }) => `${name}: ${value}, ${meaning}`);
  return { asks, hint, calculation, question, given, rounding: question.rounding, ...rest };
}

/** The five sums of one sheet. */
export function problemsOf(seed) {
  const width = problem(widthInReedFromFinished, {
    like: { finishedWidth: inches(18), reedToFinished: percentLost(10) },
    ...{ unit: inches, decimals: 2, seed },
  });
  const across = inches(width.key.answer);
  const ends = problem(endsForWidth, {
    like: { sett: endsPerInch(15), widthInReed: across, threadingRepeat: 8, balanceEnds: 1 },
    ...{ keep: ["widthInReed", "threadingRepeat", "balanceEnds"], unit: null, seed },
  });
  const length = problem(warpLength, {
    like: {
      ...{ pieces: 8, finishedLength: inches(21), hemEachEnd: inches("1.5"), loomWaste: inches(30) },
      ...{ loomToFinished: percentLost(10), takeUp: percentLost(8) },
    },
    ...{ unit: yards, decimals: 3, seed },
  });
  const mass = problem(warpMass, {
    like: {
      ...{ ends: Number(ends.key.answer), warpLength: yards(length.key.answer) },
      ...{ count: cottonCount(4), allowance: percentAdded(5) },
    },
    ...{ keep: ["ends", "warpLength", "count"], unit: pounds, decimals: 3, seed },
  });
  const { pieces, finishedLength, hemEachEnd, loomToFinished } = length.input;
  const one = wovenLength({ finishedLength, hemEachEnd, loomToFinished }).in(inches);
  const weft = problem(weftLength, {
    like: { wovenLength: inches((pieces * one).toFixed(1)), picks: picksPerInch(14), widthInReed: across },
    ...{ keep: ["wovenLength", "widthInReed"], unit: yards, decimals: 1, seed },
  });
  const reed = "The percentage was measured on the width in the reed: what is left of it is the finished width.";
  return [
    told({ asks: "How wide are the napkins in the reed?", hint: reed, calculation: widthInReedFromFinished }, width),
    told(
      {
        ...{ asks: "How many ends are wound, in whole repeats?", calculation: endsForWidth },
        hint: "Take the balancing end away first, then count whole repeats upwards.",
      },
      ends,
    ),
    told(
      {
        ...{ asks: "How long is the warp for the napkins?", calculation: warpLength },
        hint: "Work from the finished napkin back to the loom, and add the waste last.",
      },
      length,
    ),
    told(
      {
        ...{ asks: "What does the yarn of the warp weigh?", calculation: warpMass },
        hint: "The cotton count says how many hanks of 840 yd go to the pound.",
      },
      mass,
    ),
    told(
      {
        ...{ asks: "How much weft is laid straight?", calculation: weftLength },
        hint: "Count the picks first; each is as long as the reed is wide.",
      },
      weft,
    ),
  ];
}
