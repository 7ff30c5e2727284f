// Six sums of one warp for a class: napkins for a village hall. They are drawn from a seed, and each hands its answer to the
// next; print another seed for another class.
import {
  classJob,
  cottonCount,
  endsForWidth,
  endsPerInch,
  inches,
  jobSum,
  percentAdded,
  percentLost,
  picksPerInch,
  pounds,
  warpLength,
  warpMass,
  weftLength,
  widthInReedFromFinished,
  wovenLength,
  yards,
} from "@thrum/maths";

const sums = [
  {
    name: "width in the reed",
    asks: "How wide are the napkins in the reed?",
    hint: "The percentage was measured on the width in the reed: what is left of it is the finished width.",
    calculation: widthInReedFromFinished,
    wanted: {
      like: { finishedWidth: inches(18), reedToFinished: percentLost(10) },
      unit: inches,
      decimals: 2,
    },
  },
  {
    name: "ends",
    asks: "How many ends are wound, in whole repeats?",
    hint: "Take the balancing end away first, then count whole repeats upwards.",
    calculation: endsForWidth,
    wanted: {
      like: { sett: endsPerInch(15), widthInReed: inches(20), threadingRepeat: 8, balanceEnds: 1 },
      unit: null,
      keep: ["threadingRepeat", "balanceEnds"],
      takes: [["widthInReed", "width in the reed"]],
    },
  },
  {
    name: "length of the warp",
    asks: "How long is the warp for the napkins?",
    hint: "Work from the finished napkin back to the loom, and add the waste last.",
    calculation: warpLength,
    wanted: {
      like: {
        pieces: 8,
        finishedLength: inches(21),
        hemEachEnd: inches("1.5"),
        loomWaste: inches(30),
        loomToFinished: percentLost(10),
        takeUp: percentLost(8),
      },
      unit: yards,
      decimals: 3,
    },
  },
  {
    name: "weight of the warp",
    asks: "What does the yarn of the warp weigh?",
    hint: "The cotton count says how many hanks of 840 yd go to the pound.",
    calculation: warpMass,
    wanted: {
      like: { ends: 300, warpLength: yards(7), count: cottonCount(4), allowance: percentAdded(5) },
      unit: pounds,
      decimals: 3,
      keep: ["count"],
      takes: [
        ["ends", "ends"],
        ["warpLength", "length of the warp"],
      ],
    },
  },
  {
    name: "napkin at the loom",
    asks: "How long is one napkin at the loom?",
    hint: "Both hems are woven too, and the cloth loses length when it is washed.",
    calculation: wovenLength,
    wanted: {
      like: { finishedLength: inches(21), hemEachEnd: inches("1.5"), loomToFinished: percentLost(10) },
      unit: inches,
      decimals: 2,
      takes: [
        ["finishedLength", "length of the warp.finishedLength"],
        ["hemEachEnd", "length of the warp.hemEachEnd"],
        ["loomToFinished", "length of the warp.loomToFinished"],
      ],
    },
  },
  {
    name: "weft of one napkin",
    asks: "How much weft is laid straight in one napkin?",
    hint: "Count the picks first; each is as long as the reed is wide.",
    calculation: weftLength,
    wanted: {
      like: { wovenLength: inches(25), picks: picksPerInch(14), widthInReed: inches(20) },
      unit: yards,
      decimals: 1,
      takes: [
        ["wovenLength", "napkin at the loom"],
        ["widthInReed", "width in the reed"],
      ],
    },
  },
];

/** The job of a seed: its sheet and key, and each sum with its words. */
export function jobOf(seed) {
  const job = classJob(
    sums.map(({ name, calculation, wanted }) => jobSum(name, calculation, wanted)),
    seed,
  );
  const told = job.sums.map((sum, at) => ({ ...sum, ...sums[at], given: givenOf(sum) }));
  return { ...job, sums: told };
}

const givenOf = ({ question }) => question.inputs.map(({ name, value, meaning }) => `${name}: ${value}, ${meaning}`);
