import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { gateTextile } from "#ci/sources.js";
import { centimetres, millimetres, percentAdded } from "../../units/index.js";
import { clothByShortRule } from "./cloth-by-short-rule.js";

/** 30 and 15 tex of cotton by the coefficient 0.00444, at 25 ends and 28 picks to the centimetre. */
const examined = {
  endSpacing: centimetres("0.04"),
  pickSpacing: centimetres("0.03571428571428571428571428571428571428571"),
  warpDiameter: centimetres("0.01959671321500543955870283268934315395619"),
  weftDiameter: centimetres("0.0138569688032983756004969969627711974885"),
  warpCrimp: percentAdded(12),
};

/** The shirting of 2010: warp 0.01627 cm, weft 0.013016 cm, 24.849 ends and 25.014 picks to the centimetre. */
const shirting = {
  endSpacing: centimetres("0.04024264335092705828332293841488538819195"),
  pickSpacing: centimetres("0.03997730724092094581112520475500702299508"),
  warpDiameter: centimetres("0.01627"),
  weftDiameter: centimetres("0.013016"),
  warpCrimp: percentAdded(10),
};

describe("a plain weave", () => {
  cited(
    "weft crimp from 12 % in the warp, by the factor 4/3",
    published(
      gateTextile,
      "2008, Q72",
      "10.26",
      "10.10996749573821097766631655383313930713",
      "the density of 1.54 is given; 10.24 comes of 1.53",
    ),
    clothByShortRule,
    [{ ...examined, factor: 4 / 3 }],
    ["weftCrimp", percentAdded],
  );
  cited(
    "weft crimp from 12 % in the warp, by the factor 1.36",
    published(
      gateTextile,
      "2008, Q72, working",
      "10.26",
      "9.34296268583563831355004353005346031432",
      "misprint: the factor 1.36 of the working does not lead to the key",
    ),
    clothByShortRule,
    [{ ...examined, factor: 1.36 }],
    ["weftCrimp", percentAdded],
  );
  const unequal = {
    endSpacing: millimetres("0.4"),
    pickSpacing: millimetres("0.4"),
    warpDiameter: millimetres("0.2"),
    weftDiameter: millimetres("0.3"),
    warpCrimp: percentAdded(9),
  };
  cited(
    "thickness of a cloth whose weft stands higher",
    published(
      gateTextile,
      "2011, Q39",
      "0.36",
      "0.64",
      "misprint: only the warp is looked at; the weft stands at 0.34 + 0.3",
    ),
    clothByShortRule,
    [{ ...unequal, factor: 4 / 3 }],
    ["thickness", millimetres],
  );
  cited(
    "thickness of a shirting",
    published(gateTextile, "2010, Q50", "0.033", "0.03312591274688691960705768176880110712677"),
    clothByShortRule,
    [{ ...shirting, factor: 4 / 3 }],
    ["thickness", centimetres],
  );
});
