// Looking an end up and cutting a slice out of sequences of a thousand and a hundred thousand runs; comparing warps.
import { built } from "../built.mjs";
import { atMost } from "./row.mjs";
import { median, timesOf } from "./stopwatch.mjs";

const colours = ["white", "blue", "red", "green"];
const stripes = (runs) =>
  Array.from({ length: runs }, (_, run) => ({ colour: colours[run % 4], ends: 10 + (run % 21) }));

/** Places spread over a warp, in an order that no cache foresees. */
const place = (call, ends) => 1 + ((call * 7_919_317) % (ends - 250));

/** Milliseconds of each of many comparisons of two unrelated warps of 1,200 ends, another pair each time. */
function comparisons({ randomOrder, shortestEdit }) {
  const limits = colours.map((colour) => ({ colour, atLeast: 200, atMost: 400 }));
  const warp = (seed) => randomOrder({ seed, ends: 1200, colours: limits, longestRun: 12 });
  const warps = Array.from({ length: 41 }, (_, seed) => warp(seed));
  const compared = (round) => {
    const pair = { from: warps[round % 40], to: warps[(round % 40) + 1] };
    const started = performance.now();
    shortestEdit(pair);
    return performance.now() - started;
  };
  return Array.from({ length: 240 }, (_, round) => compared(round)).slice(40);
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
  const compared = comparisons(library);
  return [
    atMost("end looked up in 100000 runs", lookup / 1000, 1, "µs"),
    atMost("200 ends cut from 100000 runs", cut / 1000, 1, "µs"),
    atMost("lookup grows with the runs to the power", exponent(fewLookups, lookup), 0.6, ""),
    atMost("slice grows with the runs to the power", exponent(fewSlices, cut), 0.6, ""),
    atMost("two warps of 1200 ends compared, at the median", median(compared), 7, "ms"),
    atMost("two warps of 1200 ends compared, at worst of 200", Math.max(...compared), 7, "ms"),
  ];
}
