// Conversions and quotients, there and back, against what is exactly true.
import { Decimal } from "decimal.js";
import { built } from "../support/built.mjs";
import { peers } from "./peers.mjs";
import { countAtLeast, exactly, told } from "./row.mjs";

const upTo = (last) => Array.from({ length: last }, (_, index) => index + 1);

function yardRows({ inches, yards }) {
  const out = upTo(2000).filter((n) => yards(n).in(inches) === 36 * n);
  const back = upTo(2000).filter((n) => inches(yards(n).in(inches)).in(yards) === n);
  return [
    exactly("yards read in inches, of 2000", out.length, 2000),
    exactly("yards to inches and back, of 2000", back.length, 2000),
  ];
}

const peerRows = () =>
  Object.entries(peers).map(([name, peer]) =>
    told(`yards read in inches by ${name}, of 2000`, upTo(2000).filter((n) => peer.inches(n) === 36 * n).length, ""),
  );

function roundTripRow({ inUnit, yards, feet, inches, metres, centimetres, millimetres }) {
  const units = [yards, feet, inches, metres, centimetres, millimetres];
  const amounts = upTo(500).flatMap((n) => [n, n / 8, n / 10]);
  let whole = 0;
  for (const from of units) {
    for (const to of units.filter((unit) => unit !== from)) {
      whole += amounts.filter((amount) => inUnit(inUnit(from(amount), to), from).in(from) === amount).length;
    }
  }
  return exactly("lengths to another unit and back, of 45000", whole, 45_000);
}

/** a ÷ b × b rounded to a whole is a; rounding that trusts its forty digits often says one more or one less. */
function roundingRows({ endsForWidth, endsPerInch, reedWidth }) {
  const Forty = Decimal.clone({ defaults: true, precision: 40 });
  let wrong = 0;
  let wrongDecimal = 0;
  for (const ends of upTo(150)) {
    for (const perInch of upTo(150)) {
      const sett = endsPerInch(perInch);
      const widthInReed = reedWidth({ ends, sett });
      if (endsForWidth({ sett, widthInReed, threadingRepeat: 1, balanceEnds: 0 }) !== ends) wrong += 1;
      const plain = new Forty(ends).div(perInch).times(perInch);
      if (!plain.floor().eq(ends) || !plain.ceil().eq(ends)) wrongDecimal += 1;
    }
  }
  return [
    exactly("ends lost from their width and back, of 22500", wrong, 0),
    countAtLeast("the same in plain 40-digit decimals", wrongDecimal, 1000, "wrong"),
  ];
}

export async function figures() {
  const maths = await built("maths");
  return [...yardRows(maths), ...peerRows(), roundTripRow(maths), ...roundingRows(maths)];
}
