import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { cdquestionsMass2025, gateTextile } from "#ci/sources.js";
import {
  cottonCount,
  endsPerCentimetre,
  gramsPerSquareMetre,
  percentAdded,
  picksPerCentimetre,
  tex,
} from "../../units/index.js";
import { clothMassPerAreaDirect } from "./cloth-mass-per-area-direct.js";

const thirtyAndTwenty = {
  sett: endsPerCentimetre(40),
  picks: picksPerCentimetre(30),
  warpCount: tex(30),
  weftCount: tex(20),
  warpCrimp: percentAdded(10),
  weftCrimp: percentAdded(10),
};

describe("the mass of a cloth for its size", () => {
  cited(
    "30 tex by 20 tex, 40 by 30 to the centimetre",
    published(gateTextile, "2009, Q37", "198", "198"),
    clothMassPerAreaDirect,
    [thirtyAndTwenty],
    gramsPerSquareMetre,
  );
  cited(
    "30 tex by 20 tex, 40 by 30 to the centimetre, by the option marked as right",
    published(cdquestionsMass2025, "whole question", "188", "198", "misprint: works out 198 and marks the option 188"),
    clothMassPerAreaDirect,
    [thirtyAndTwenty],
    gramsPerSquareMetre,
  );
  cited(
    "25 tex by 32 tex, 25 by 15 to the centimetre",
    published(gateTextile, "2017, Q43", "118.09", "118.09"),
    clothMassPerAreaDirect,
    [
      {
        sett: endsPerCentimetre(25),
        picks: picksPerCentimetre(15),
        warpCount: tex(25),
        weftCount: tex(32),
        warpCrimp: percentAdded(6),
        weftCrimp: percentAdded(8),
      },
    ],
    gramsPerSquareMetre,
  );
  cited(
    "a shirting whose weft crimp follows from the warp",
    published(
      gateTextile,
      "2010, Q50",
      "91.15",
      "91.18648129563797083289676248635157607290",
      "the given mass goes with a weft crimp of 4.59 %; the geometry makes it 4.70 %",
    ),
    clothMassPerAreaDirect,
    [
      {
        sett: endsPerCentimetre("24.84926229322764617937551446726151608862"),
        picks: picksPerCentimetre("25.01419102526234294605278558098227836354"),
        warpCount: tex("20.67901682087492898303709114519925330736"),
        weftCount: tex("13.23457076535995454914373833292752211671"),
        warpCrimp: percentAdded(10),
        weftCrimp: percentAdded("4.702760783794183551284899863419816047269"),
      },
    ],
    gramsPerSquareMetre,
  );
  it("is refused for a count of the wrong kind and for no ends", () => {
    expect(() => clothMassPerAreaDirect({ ...thirtyAndTwenty, warpCount: cottonCount(20) as never })).toThrow(
      "({ warpCount })",
    );
    expect(() => clothMassPerAreaDirect({ ...thirtyAndTwenty, sett: endsPerCentimetre(0) })).toThrow("sett");
  });
});
