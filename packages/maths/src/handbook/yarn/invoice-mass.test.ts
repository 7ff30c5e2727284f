import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { gateTextile, islamInvoiceMass } from "#ci/sources.js";
import { kilograms, percentAdded, percentLost } from "../../units/index.js";
import { invoiceMass } from "./invoice-mass.js";

describe("averages, contraction and regain", () => {
  cited(
    "20 tonnes at 4 % of water",
    published(islamInvoiceMass, "Problem 2", "19587.84", "19587.84"),
    invoiceMass,
    [{ mass: kilograms(20000), content: percentLost(4), regain: percentAdded("2.02") }],
    kilograms,
  );
  cited(
    "100 kg of polyester and cotton at 4 % of water",
    published(
      gateTextile,
      "2010, Q38",
      "99.10",
      "309219/3125",
      "misprint: divides by 1.04 where 4 % is of the mass as it is",
    ),
    invoiceMass,
    [{ mass: kilograms(100), content: percentLost(4), regain: percentAdded("3.073") }],
    kilograms,
  );
});

describe("the limits of invoice mass", () => {
  limits(
    invoiceMass,
    [
      "is the mass itself where dry yarn is sold dry",
      { mass: kilograms(100), content: percentLost(0), regain: percentAdded(0) },
      100,
      kilograms,
    ],
    { mass: kilograms(0), content: percentLost(100), regain: percentAdded(-1) },
  );
});
