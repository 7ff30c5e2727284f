// General libraries of units: how each does the same work, for figures beside ours in one run.
import convert from "convert-units";
import Qty from "js-quantities";
import { add, divide, multiply, unit } from "mathjs";
import { feet, inches, Measure, meters, yards } from "safe-units";
import unitmath from "unitmath";

/**
 * By name: a number of yards held; a held one in metres, or added to as many feet; metres and inches of a number of yards;
 * centimetres of a text, where a library reads text; and the yards of a warp for so many pieces.
 */
export const peers = {
  mathjs: {
    held: (count) => unit(count, "yd"),
    heldMetres: (length) => length.toNumber("m"),
    added: (length) => add(length, mathjsFeet).value,
    metres: (count) => unit(count, "yd").toNumber("m"),
    inches: (count) => unit(count, "yd").toNumber("in"),
    centimetresOf: (text) => unit(text).toNumber("cm"),
    warp: (pieces) => {
      const cloth = multiply(add(unit(21, "in"), multiply(unit(1, "in"), 2)), pieces);
      return add(divide(divide(cloth, 1 - 0.1), 1 - 0.08), unit(30, "in")).toNumber("yd");
    },
  },
  "js-quantities": {
    held: (count) => Qty(count, "yd"),
    heldMetres: (length) => length.to("m").scalar,
    added: (length) => length.add(qtyFeet).scalar,
    metres: (count) => Qty(count, "yd").to("m").scalar,
    inches: (count) => Qty(count, "yd").to("in").scalar,
    centimetresOf: (text) => Qty(text).to("cm").scalar,
    warp: (pieces) => {
      const cloth = Qty(21, "in").add(Qty(1, "in").mul(2)).mul(pieces);
      return cloth
        .div(1 - 0.1)
        .div(1 - 0.08)
        .add(Qty(30, "in"))
        .to("yd").scalar;
    },
  },
  "convert-units": {
    metres: (count) => convert(count).from("yd").to("m"),
    inches: (count) => convert(count).from("yd").to("in"),
  },
  unitmath: {
    held: (count) => unitmath(count, "yd"),
    heldMetres: (length) => length.to("m").getValue(),
    added: (length) => length.add(unitmathFeet).getValue(),
    metres: (count) => unitmath(count, "yd").to("m").getValue(),
    inches: (count) => unitmath(count, "yd").to("in").getValue(),
    centimetresOf: (text) => unitmath(text).to("cm").getValue(),
    warp: (pieces) => {
      const cloth = unitmath(21, "in").add(unitmath(1, "in").mul(2)).mul(pieces);
      return cloth
        .div(1 - 0.1)
        .div(1 - 0.08)
        .add(unitmath(30, "in"))
        .to("yd")
        .getValue();
    },
  },
  "safe-units": {
    held: (count) => Measure.of(count, yards),
    heldMetres: (length) => length.valueIn(meters),
    added: (length) => length.plus(safeFeet).value,
    metres: (count) => Measure.of(count, yards).valueIn(meters),
    inches: (count) => Measure.of(count, yards).valueIn(inches),
    warp: (pieces) => {
      const cloth = Measure.of(21, inches).plus(Measure.of(1, inches).scale(2)).scale(pieces);
      return cloth
        .scale(1 / (1 - 0.1))
        .scale(1 / (1 - 0.08))
        .plus(Measure.of(30, inches))
        .valueIn(yards);
    },
  },
};

const [mathjsFeet, qtyFeet, unitmathFeet, safeFeet] = [
  unit(2, "ft"),
  Qty(2, "ft"),
  unitmath(2, "ft"),
  Measure.of(2, feet),
];
