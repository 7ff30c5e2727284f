// A formula over columns of numbers, beside a loop written by hand that makes the same checks, in a program that has used
// twenty other formulas before: an engine that is fast for one formula only is slow here.
import { built } from "../support/built.mjs";
import { ratioAtMost } from "./row.mjs";
import { timesOf } from "./stopwatch.mjs";

const rows = 200_000;
const column = (first) => Float64Array.from({ length: rows }, (_, row) => first + (row % 97));
const fixed = { hemEachEnd: 1, loomToFinished: 10, takeUp: 8, loomWaste: 30 };

/** Yards of warp from inches, with every input and answer held to its range. */
function byHand({ pieces, finishedLength, hemEachEnd, loomToFinished, takeUp, loomWaste }) {
  if (!(hemEachEnd >= 0 && loomToFinished >= 0 && loomToFinished < 100)) throw new RangeError("hem or shrinkage");
  if (!(takeUp >= 0 && takeUp < 100 && loomWaste >= 0)) throw new RangeError("take-up or waste");
  const answer = new Float64Array(pieces.length);
  for (let row = 0; row < pieces.length; row += 1) {
    const count = pieces[row];
    const finished = finishedLength[row];
    if (!(count >= 1 && Math.trunc(count) === count && finished > 0)) throw new RangeError(`row ${row}`);
    const onLoom = (count * (finished + 2 * hemEachEnd)) / (1 - loomToFinished / 100);
    const warp = (onLoom / (1 - takeUp / 100) + loomWaste) / 36;
    if (!(warp > 0 && warp < Infinity)) throw new RangeError(`row ${row}`);
    answer[row] = warp;
  }
  return answer;
}

/** Twenty formulas over columns: five calculations, each with four choices of units. */
function useOthers({ cottonCount, dentsForEnds, endsPerInch, feet, forColumns, inches, metres, ounces, ...maths }) {
  const { packagesToBuy, pounds, reedWidth, yards, yarnMass, grains } = maths;
  const numbers = column(1);
  for (const [length, mass] of [
    [inches, grains],
    [feet, ounces],
    [yards, pounds],
    [metres, grains],
  ]) {
    forColumns(dentsForEnds, {}, null)({ ends: numbers, endsPerDent: 2 });
    forColumns(packagesToBuy, { needed: mass, packageMass: mass }, null)({ needed: numbers, packageMass: 8 });
    forColumns(reedWidth, { sett: endsPerInch }, length)({ ends: numbers, sett: 20 });
    forColumns(yarnMass, { length, count: cottonCount }, mass)({ length: numbers, count: numbers });
    forColumns(yarnMass, { length, count: cottonCount }, mass)({ length: 840, count: numbers });
  }
}

export async function figures() {
  const maths = await built("maths");
  useOthers(maths);
  const { forColumns, inches, percentLost, warpLength, yards } = maths;
  const lengths = { finishedLength: inches, hemEachEnd: inches, loomWaste: inches };
  const ours = forColumns(warpLength, { ...lengths, loomToFinished: percentLost, takeUp: percentLost }, yards);
  const typed = { ...fixed, pieces: column(1), finishedLength: column(10) };
  const plain = { ...fixed, pieces: Array.from(typed.pieces), finishedLength: Array.from(typed.finishedLength) };
  const works = [() => byHand(typed)[rows - 1], () => ours(typed)[rows - 1], () => ours(plain)[rows - 1]];
  const [hand, float64, array] = timesOf(works, { calls: 8 });
  return [
    ratioAtMost("a column of Float64Array, ÷ a loop by hand", float64 / hand, 3),
    ratioAtMost("a column of plain arrays, ÷ a loop by hand", array / hand, 3),
  ];
}
