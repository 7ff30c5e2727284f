// A length that is held and read in another unit, beside a general library's unit object.
import { unit } from "mathjs";
import { built } from "../built.mjs";
import { atLeast } from "./row.mjs";
import { timesOf } from "./stopwatch.mjs";

export async function figures() {
  const { metres, yards } = await built("maths");
  const ours = Array.from({ length: 64 }, (_, index) => yards(index + 1));
  const theirs = Array.from({ length: 64 }, (_, index) => unit(index + 1, "yd"));
  const [our, their] = timesOf([(call) => ours[call & 63].in(metres), (call) => theirs[call & 63].toNumber("m")], {
    calls: 100_000,
  });
  return [atLeast("held length read in another unit, mathjs ÷ ours", their / our, 5, "×")];
}
