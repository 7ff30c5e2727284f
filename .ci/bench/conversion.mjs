// A length held, made from a number or read from text, and told in another unit, beside general libraries in turn.
import { unit } from "mathjs";
import { built } from "../built.mjs";
import { peers } from "./peers.mjs";
import { atLeast, told } from "./row.mjs";
import { timesOf } from "./stopwatch.mjs";

const names = Object.keys(peers);
const rowsFor = (what, wanted, [our, ...theirs]) =>
  wanted.map((name, at) => told(`${what}, ${name} ÷ ours`, theirs[at] / our, "×"));

/** Each work in turn in every round: ours first, then the peers that can do it. */
const besidePeers = (ours, wanted, work) => timesOf([ours, ...wanted.map(work)], { calls: 2000 });

function heldRow({ metres, yards }) {
  const ours = Array.from({ length: 64 }, (_, index) => yards(index + 1));
  const theirs = Array.from({ length: 64 }, (_, index) => unit(index + 1, "yd"));
  const [our, their] = timesOf([(call) => ours[call & 63].in(metres), (call) => theirs[call & 63].toNumber("m")], {
    calls: 100_000,
  });
  return atLeast("held length told in another unit, mathjs ÷ ours", their / our, 5, "×");
}

export async function figures() {
  const maths = await built("maths");
  const { centimetres, inches, lengthFrom, metres, yards } = maths;
  const made = besidePeers(
    (call) => yards(1 + (call & 63)).in(metres),
    names,
    (name) => (call) => peers[name].metres(1 + (call & 63)),
  );
  const texts = Array.from({ length: 64 }, (_, index) => `${index + 1}.5 in`);
  const readers = names.filter((name) => "centimetresOf" in peers[name]);
  const read = besidePeers(
    (call) => lengthFrom(texts[call & 63], [inches]).in(centimetres),
    readers,
    (name) => (call) => peers[name].centimetresOf(texts[call & 63]),
  );
  return [
    heldRow(maths),
    ...rowsFor("yards made and told in metres", names, made),
    ...rowsFor("text read and told in centimetres", readers, read),
  ];
}
