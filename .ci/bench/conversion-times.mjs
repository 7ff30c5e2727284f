// The same work by ours and by general libraries, in turn in one run: ours in 34 exact digits, its kinds and ranges checked;
// theirs in doubles. js-quantities remembers a conversion it has made, safe-units is a double and a unit without a check:
// both are ahead of us where nothing but one multiplication is left to do. Printed as JSON, for conversion.mjs.
import { Decimal } from "decimal.js";
import { built } from "../support/built.mjs";
import { peers } from "./peers.mjs";
import { timesTheFirst } from "./stopwatch.mjs";

const numbers = Array.from({ length: 64 }, (_, index) => index + 1);
const Forty = Decimal.clone({ defaults: true, precision: 40 });

/** Microseconds of one call of ours, and how many times as long each peer that can do the work takes. */
function timesOfWork(ours, ability, calls, prepared = (peer) => numbers.map((number) => peer.held?.(number))) {
  const able = Object.entries(peers).filter(([, peer]) => ability in peer);
  const works = able.map(([, peer]) => {
    const given = prepared(peer);
    return (call) => peer[ability](given[call & 63]);
  });
  const [own, ...ratios] = timesTheFirst([ours, ...works], { calls });
  return { ours: own / 1000, ...Object.fromEntries(able.map(([name], at) => [name, ratios[at]])) };
}

/** The sum of a warp's length, as one would write it in plain decimal numbers. */
function byDecimal(pieces) {
  const cloth = new Forty(21).plus(new Forty(1).times(2)).times(pieces);
  const thread = cloth.div(new Forty(1).minus("0.1")).div(new Forty(1).minus("0.08"));
  return thread.plus(30).div(36).toNumber();
}

async function times() {
  const { centimetres, feet, inches, lengthFrom, metres, percentLost, sum, warpLength, yards } = await built("maths");
  const held = numbers.map((number) => yards(number));
  const feetHeld = numbers.map((number) => feet(number));
  const texts = numbers.map((number) => `${number}.5 in`);
  const warp = (pieces) =>
    warpLength({
      pieces,
      finishedLength: inches(21),
      hemEachEnd: inches(1),
      loomToFinished: percentLost(10),
      takeUp: percentLost(8),
      loomWaste: inches(30),
    }).in(yards);
  const own = () => numbers;
  const [decimalTime] = timesTheFirst([(call) => byDecimal(numbers[call & 63])], { calls: 2000 });
  return {
    "held yards told in metres": timesOfWork((call) => held[call & 63].in(metres), "heldMetres", 20_000),
    "yards made and told in metres": timesOfWork((call) => yards(numbers[call & 63]).in(metres), "metres", 5000, own),
    "yards and feet added": timesOfWork(
      (call) => sum(held[call & 63], feetHeld[call & 63]).value.length,
      "added",
      3000,
    ),
    "text read and told in centimetres": timesOfWork(
      (call) => lengthFrom(texts[call & 63], [inches]).in(centimetres),
      "centimetresOf",
      2000,
      () => texts,
    ),
    "a warp's length from numbers": timesOfWork((call) => warp(numbers[call & 63]), "warp", 1000, own),
    "a warp's length in plain decimal.js, no units, no checks": { ours: decimalTime / 1000 },
  };
}

process.stdout.write(JSON.stringify(await times()));
