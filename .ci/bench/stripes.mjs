// Looking an end up and cutting a slice out of sequences of a thousand and a hundred thousand runs; comparing warps.
import { diffArrays } from "diff";
import { built } from "../support/built.mjs";
import { countAtMost, ratioAtLeast, told } from "./row.mjs";
import { median, timesOf } from "./stopwatch.mjs";

const colours = ["white", "blue", "red", "green"];
const stripes = (runs) =>
  Array.from({ length: runs }, (_, run) => ({ colour: colours[run % 4], ends: 10 + (run % 21) }));

/** Places spread over a warp, in an order that no cache foresees. */
const place = (call, ends) => 1 + ((call * 7_919_317) % (ends - 250));

const randomWarps = ({ randomOrder }, ends, many) => {
  const limits = colours.map((colour) => ({ colour, atLeast: ends / 6, atMost: ends / 3 }));
  return Array.from({ length: many }, (_, seed) => randomOrder({ seed, ends, colours: limits, longestRun: 12 }));
};

/** Milliseconds of comparing each pair of neighbours, the middle of three times, once the code is warm. */
function comparisons(warps, compare) {
  const pairs = warps.slice(1).map((to, at) => ({ from: warps[at], to }));
  const timed = (pair) => {
    const started = performance.now();
    compare(pair);
    return performance.now() - started;
  };
  for (const pair of pairs) timed(pair);
  return pairs.map((pair) => median([timed(pair), timed(pair), timed(pair)]));
}

/** Two unrelated warps, ours beside a general comparison of lists, and what four times the ends cost. */
function comparisonRows({ everyEnd, randomOrder, shortestEdit }) {
  const warps = randomWarps({ randomOrder }, 1200, 41);
  const ours = comparisons(warps, shortestEdit);
  const listed = warps.map((warp) => [...everyEnd(warp)]);
  const theirs = comparisons(listed, ({ from, to }) => diffArrays(from, to));
  const larger = comparisons(randomWarps({ randomOrder }, 4800, 21), shortestEdit);
  const middle = median(ours);
  return [
    told("two warps of 1200 ends compared, at the median", middle, "ms"),
    told("two warps of 1200 ends compared, the worst of 40 pairs", Math.max(...ours), "ms"),
    ratioAtLeast("the same two warps compared, diff ÷ ours", median(theirs) / middle, 8),
    told("comparing grows with the ends to the power", Math.log(median(larger) / middle) / Math.log(4), ""),
  ];
}

export async function figures() {
  const library = await built("stripes");
  const { colourOfEnd, sequence, slice } = library;
  const sizes = [1000, 100_000];
  const warps = sizes.map((runs) => sequence(stripes(runs)));
  const lookups = warps.map((warp) => (call) => colourOfEnd({ sequence: warp, end: place(call, warp.ends) }).length);
  const slices = warps.map((warp) => (call) => {
    const after = place(call, warp.ends);
    return slice({ sequence: warp, after, upTo: after + 200 }).ends;
  });
  const [fewLookups, lookup, fewSlices, cut] = timesOf([...lookups, ...slices], { calls: 20_000 });
  const exponent = (few, many) => Math.log(many / few) / Math.log(sizes[1] / sizes[0]);
  return [
    told("end looked up in 100000 runs", lookup / 1000, "µs"),
    told("200 ends cut from 100000 runs", cut / 1000, "µs"),
    // 0 would be the same for any number of runs, 1 a walk through all of them.
    countAtMost("lookup grows with the runs to the power", exponent(fewLookups, lookup), 0.6, ""),
    countAtMost("slice grows with the runs to the power", exponent(fewSlices, cut), 0.6, ""),
    ...comparisonRows(library),
  ];
}
