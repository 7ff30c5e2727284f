import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { gateTextile } from "#ci/sources.js";
import { centimetres, percentAdded } from "../../units/index.js";
import { peirceCloth } from "./peirce-cloth.js";

/** 30 and 15 tex of cotton by the coefficient 0.00444, at 25 ends and 28 picks to the centimetre. */
const examined = {
  endSpacing: centimetres("0.04"),
  pickSpacing: centimetres("0.03571428571428571428571428571428571428571"),
  warpDiameter: centimetres("0.01959671321500543955870283268934315395619"),
  weftDiameter: centimetres("0.0138569688032983756004969969627711974885"),
  warpCrimp: percentAdded(12),
};

describe("a plain weave", () => {
  cited(
    "weft crimp from 12 % in the warp, in full",
    published(
      gateTextile,
      "2008, Q72",
      "10.26",
      "9.774393383593283415960704512617370534855",
      "the key keeps to a short rule with the factor 4/3; the working beside it takes 1.36",
    ),
    peirceCloth,
    [examined],
    ["weft.crimp", percentAdded],
  );
});
