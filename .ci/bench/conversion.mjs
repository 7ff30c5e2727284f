// The same work by ours and by general libraries, in turn in one run: ours in 34 exact digits, its kinds and ranges checked;
// theirs in doubles. js-quantities remembers a conversion it has made, safe-units is a double and a unit without a check:
// both are ahead of us where nothing but one multiplication is left to do.
import { Decimal } from "decimal.js";
import { built } from "../support/built.mjs";
import { peers } from "./peers.mjs";
import { ratioAtLeast, told } from "./row.mjs";
import { timesTheFirst } from "./stopwatch.mjs";

const numbers = Array.from({ length: 64 }, (_, index) => index + 1);
const Forty = Decimal.clone({ defaults: true, precision: 40 });

/** Rows of one piece of work: how many times ours each peer that can do it takes, and a budget where one is set. */
function rows(what, ours, ability, budgets, calls, prepared = (peer) => numbers.map((number) => peer.held?.(number))) {
  const able = Object.entries(peers).filter(([, peer]) => ability in peer);
  const works = able.map(([, peer]) => {
    const given = prepared(peer);
    return (call) => peer[ability](given[call & 63]);
  });
  const [own, ...ratios] = timesTheFirst([ours, ...works], { calls });
  return [
    told(`${what}, ours`, own / 1000, "µs"),
    ...able.map(([name], at) =>
      name in budgets
        ? ratioAtLeast(`${what}, ${name} ÷ ours`, ratios[at], budgets[name])
        : told(`${what}, ${name} ÷ ours`, ratios[at], "×"),
    ),
  ];
}

/** The sum of a warp's length, as one would write it in plain decimal numbers. */
function byDecimal(pieces) {
  const cloth = new Forty(21).plus(new Forty(1).times(2)).times(pieces);
  const thread = cloth.div(new Forty(1).minus("0.1")).div(new Forty(1).minus("0.08"));
  return thread.plus(30).div(36).toNumber();
}

export async function figures() {
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
  return [
    ...rows("held yards told in metres", (call) => held[call & 63].in(metres), "heldMetres", { mathjs: 10 }, 20_000),
    ...rows(
      "yards made and told in metres",
      (call) => yards(numbers[call & 63]).in(metres),
      "metres",
      { mathjs: 3 },
      5000,
      own,
    ),
    ...rows(
      "yards and feet added",
      (call) => sum(held[call & 63], feetHeld[call & 63]).value.length,
      "added",
      { mathjs: 1 },
      3000,
    ),
    ...rows(
      "text read and told in centimetres",
      (call) => lengthFrom(texts[call & 63], [inches]).in(centimetres),
      "centimetresOf",
      {},
      2000,
      () => texts,
    ),
    // Slower than a double by what 34 digits of two divisions and the check of six inputs take.
    ...rows("a warp's length from numbers", (call) => warp(numbers[call & 63]), "warp", { mathjs: 1 }, 1000, own),
    told("a warp's length in plain decimal.js, no units, no checks", decimalTime / 1000, "µs"),
  ];
}
