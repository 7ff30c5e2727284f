// A formula over columns of a million rows, beside a loop written by hand with the same checks of its answer.
import { built } from "../built.mjs";
import { atMost } from "./row.mjs";
import { timesOf } from "./stopwatch.mjs";

const rows = 1_000_000;
const column = (first) => Float64Array.from({ length: rows }, (_, row) => first + (row % 97));
const columns = { pieces: column(1), finishedLength: column(10) };
const fixed = { hemEachEnd: 1, loomToFinished: 10, takeUp: 8, loomWaste: 30 };

/** Yards of warp, with every input held to the range the formula declares for it. */
function byHand({ pieces, finishedLength }) {
  const answer = new Float64Array(pieces.length);
  for (let row = 0; row < pieces.length; row += 1) {
    const count = pieces[row];
    const finished = finishedLength[row];
    if (!(count >= 1) || Math.trunc(count) !== count || !(finished > 0)) throw new Error(`row ${row} is out of range`);
    const onLoom = (count * (finished + 2 * fixed.hemEachEnd)) / (1 - fixed.loomToFinished / 100);
    const warp = (onLoom / (1 - fixed.takeUp / 100) + fixed.loomWaste) / 36;
    if (!(warp > 0) || warp === Infinity) throw new Error(`row ${row} has no answer`);
    answer[row] = warp;
  }
  return answer;
}

export async function figures() {
  const { forColumns, inches, percentLost, warpLength, yards } = await built("maths");
  const units = {
    finishedLength: inches,
    hemEachEnd: inches,
    loomToFinished: percentLost,
    takeUp: percentLost,
    loomWaste: inches,
  };
  const ours = forColumns(warpLength, units, yards);
  const input = Object.fromEntries(
    Object.entries(fixed).map(([name, value]) => [name, new Float64Array(rows).fill(value)]),
  );
  const typed = { ...input, ...columns };
  const plain = Object.fromEntries(Object.entries(typed).map(([name, values]) => [name, Array.from(values)]));
  const [hand, float64, array] = timesOf(
    [() => byHand(typed)[rows - 1], () => ours(typed)[rows - 1], () => ours(plain)[rows - 1]],
    { calls: 1 },
  );
  return [
    atMost("a column of Float64Array, ÷ a loop by hand", float64 / hand, 6, "×"),
    atMost("a column of plain arrays, ÷ a loop by hand", array / hand, 9, "×"),
  ];
}
