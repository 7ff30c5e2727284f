// Conversions there and back, and floors of quotients, against what is exactly true.
import { Decimal } from "decimal.js";
import { built } from "../built.mjs";
import { atLeast, exactly } from "./row.mjs";

const upTo = (last) => Array.from({ length: last }, (_, index) => index + 1);

function yardRows({ inches, yards }) {
  const out = upTo(2000).filter((n) => yards(n).in(inches) === 36 * n);
  const back = upTo(2000).filter((n) => inches(yards(n).in(inches)).in(yards) === n);
  return [
    exactly("yards read in inches, of 2000", out.length, 2000),
    exactly("yards to inches and back, of 2000", back.length, 2000),
  ];
}

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

/** a ÷ b × b rounded down is a; a rounding that trusts its forty digits often says one less. */
function floorRows({ calculation, whole }) {
  const floor = calculation(() => ({
    name: "floorOfQuotient",
    inputs: {
      shared: whole("things", "shared out", { atLeast: 1 }),
      among: whole("people", "among whom", { atLeast: 1 }),
    },
    formula: `
      share = shared ÷ among
      gathered = roundDown(share × among)`,
    result: whole("things", "gathered again", { atLeast: 0 }),
    source: { key: "none", author: "none", title: "none", year: "none", place: "none" },
  }));
  const Forty = Decimal.clone({ defaults: true, precision: 40 });
  let wrong = 0;
  let wrongDecimal = 0;
  for (const a of upTo(150)) {
    for (const b of upTo(150)) {
      if (floor({ shared: a, among: b }) !== a) wrong += 1;
      if (!new Forty(a).div(b).times(b).floor().eq(a)) wrongDecimal += 1;
    }
  }
  return [
    exactly("wrong floors of a ÷ b × b, of 22500", wrong, 0),
    atLeast("the same in plain 40-digit decimals", wrongDecimal, 1000, "wrong"),
  ];
}

export async function figures() {
  const maths = await built("maths");
  return [...yardRows(maths), roundTripRow(maths), ...floorRows(maths)];
}
