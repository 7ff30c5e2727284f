// General libraries of units: how each turns yards into another unit, for figures beside ours in one run.
import convert from "convert-units";
import Qty from "js-quantities";
import { unit } from "mathjs";
import { inches, Measure, meters, yards } from "safe-units";
import unitmath from "unitmath";

/** By name: metres of a number of yards; inches of it; and centimetres of a text, where a library reads text. */
export const peers = {
  mathjs: {
    metres: (count) => unit(count, "yd").toNumber("m"),
    inches: (count) => unit(count, "yd").toNumber("in"),
    centimetresOf: (text) => unit(text).toNumber("cm"),
  },
  "js-quantities": {
    metres: (count) => Qty(count, "yd").to("m").scalar,
    inches: (count) => Qty(count, "yd").to("in").scalar,
    centimetresOf: (text) => Qty(text).to("cm").scalar,
  },
  "convert-units": {
    metres: (count) => convert(count).from("yd").to("m"),
    inches: (count) => convert(count).from("yd").to("in"),
  },
  unitmath: {
    metres: (count) => unitmath(count, "yd").to("m").getValue(),
    inches: (count) => unitmath(count, "yd").to("in").getValue(),
    centimetresOf: (text) => unitmath(text).to("cm").getValue(),
  },
  "safe-units": {
    metres: (count) => Measure.of(count, yards).valueIn(meters),
    inches: (count) => Measure.of(count, yards).valueIn(inches),
  },
};
