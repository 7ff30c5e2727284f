import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { apparelAnalysis2013, gateTextile } from "#ci/sources.js";
import {
  cottonCount,
  endsPerCentimetre,
  endsPerInch,
  gramsPerSquareMetre,
  metricCount,
  percentAdded,
  picksPerCentimetre,
  picksPerInch,
} from "../../units/index.js";
import { clothMassPerArea } from "./cloth-mass-per-area.js";

const thirtiesAndThirtyFives = {
  sett: endsPerCentimetre(35),
  warpCount: cottonCount(30),
  weftCount: cottonCount(35),
  warpCrimp: percentAdded("6.5"),
  weftCrimp: percentAdded(13),
};

const examined = "Q74 and its working";

describe("the mass of a cloth for its size", () => {
  cited(
    "30s by 35s, 35 by 30 to the centimetre as stated",
    published(
      gateTextile,
      `2003, ${examined}`,
      "112",
      "130.5728879625723867849852101820605757614",
      "misprint: 30 picks are stated and 20 worked with",
    ),
    clothMassPerArea,
    [{ ...thirtiesAndThirtyFives, picks: picksPerCentimetre(30) }],
    gramsPerSquareMetre,
  );
  cited(
    "30s by 35s, 35 by 20 to the centimetre as worked",
    published(gateTextile, `2003, ${examined}`, "112", "111.5068419735293504978548434862308780569"),
    clothMassPerArea,
    [{ ...thirtiesAndThirtyFives, picks: picksPerCentimetre(20) }],
    gramsPerSquareMetre,
  );
  cited(
    "40s both ways, 120 by 60 to the inch",
    published(
      apparelAnalysis2013,
      "worked example",
      "104.77",
      "110.9008563121292909252485171637009940687",
      "misprint: nearly the mass without its 6 % of crimp; the formula printed gives 111.00",
    ),
    clothMassPerArea,
    [
      {
        sett: endsPerInch(120),
        picks: picksPerInch(60),
        warpCount: cottonCount(40),
        weftCount: cottonCount(40),
        warpCrimp: percentAdded(6),
        weftCrimp: percentAdded(6),
      },
    ],
    gramsPerSquareMetre,
  );
});

describe("the limits of cloth mass per area", () => {
  limits(
    clothMassPerArea,
    [
      "of straight threads is 4000 m and 3000 m at 20 m to the gram",
      {
        sett: endsPerCentimetre(40),
        picks: picksPerCentimetre(30),
        warpCount: metricCount(20),
        weftCount: metricCount(20),
        warpCrimp: percentAdded(0),
        weftCrimp: percentAdded(0),
      },
      350,
      gramsPerSquareMetre,
    ],
    {
      sett: endsPerCentimetre(0),
      picks: picksPerCentimetre(0),
      warpCount: metricCount(0),
      weftCount: metricCount(-1),
      weftCrimp: percentAdded(-1),
    },
  );
});
