import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { QuantityError } from "../../engine/refusal.js";
import {
  apparelAnalysis2013,
  brooks1892,
  commonPractice,
  fabricWeight,
  gateTextile,
  plainWeaveMass2025,
} from "../../sources/index.js";
import {
  cottonCount,
  endsPerCentimetre,
  endsPerInch,
  grains,
  gramsPerSquareMetre,
  inches,
  ounces,
  ouncesPerSquareYard,
  percentAdded,
  picksPerCentimetre,
  picksPerInch,
  tex,
} from "../../units/index.js";
import { warpMass } from "../warp/warp-mass.js";
import { clothMassPerAreaDirect } from "./cloth-mass-per-area-direct.js";
import { clothMassPerArea } from "./cloth-mass-per-area.js";
import { countFromCloth } from "./count-from-cloth.js";
import { pieceMass } from "./piece-mass.js";
import { specificVolume } from "./specific-volume.js";
import { warpMassPerArea } from "./warp-mass-per-area.js";

const thirtyAndTwenty = {
  sett: endsPerCentimetre(40),
  picks: picksPerCentimetre(30),
  warpCount: tex(30),
  weftCount: tex(20),
  warpCrimp: percentAdded(10),
  weftCrimp: percentAdded(10),
};
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
    "30 tex by 20 tex, 40 by 30 to the centimetre",
    published(gateTextile, "2009, Q37", "198", "198"),
    clothMassPerAreaDirect,
    [thirtyAndTwenty],
    gramsPerSquareMetre,
  );
  cited(
    "the same cloth, as another site marks it",
    published(plainWeaveMass2025, "whole question", "188", "198", "misprint: works out 198 and marks the option 188"),
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
    "a shirting whose weft crimp follows from its warp",
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
  cited(
    "warp of 30s, 35 to the centimetre",
    published(
      gateTextile,
      `2003, ${examined}`,
      "73.5",
      "73.374749995443277923592884222805482648",
      "0.59 ÷ 30 is put up to 0.0197 on the way",
    ),
    warpMassPerArea,
    [{ sett: endsPerCentimetre(35), count: cottonCount(30), crimp: percentAdded("6.5") }],
    gramsPerSquareMetre,
  );
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
    "one end of ones cotton to the inch",
    published(fabricWeight, "worked answer, the constant", "23.25", "23.24965541134785973275650255004213712131"),
    warpMassPerArea,
    [{ sett: endsPerInch(1), count: cottonCount(1), crimp: percentAdded(0) }],
    gramsPerSquareMetre,
  );
  cited(
    "one end of ones cotton to the inch, in ounces to the square yard",
    { source: fabricWeight, at: "worked answer, the constant", status: "read", prints: "", exact: "24/35" },
    warpMassPerArea,
    [{ sett: endsPerInch(1), count: cottonCount(1), crimp: percentAdded(0) }],
    ouncesPerSquareYard,
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

  it("is that of its warp, wound and woven, over the size of the piece", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 80 }), fc.integer({ min: 2, max: 120 }), (perInch, count) => {
        const ends = 36 * perInch;
        const wound = { ends, warpLength: inches("37.8"), count: cottonCount(count), waste: percentAdded(0) };
        const yard = warpMassPerArea({ sett: endsPerInch(perInch), count: cottonCount(count), crimp: percentAdded(5) });
        expect(yard.in(ouncesPerSquareYard)).toBeCloseTo(warpMass(wound).in(ounces), 9);
      }),
    );
  });

  it("is refused for a count of the wrong kind and for no ends", () => {
    expect(() => clothMassPerAreaDirect({ ...thirtyAndTwenty, warpCount: cottonCount(20) as never })).toThrow(
      QuantityError,
    );
    expect(() => clothMassPerAreaDirect({ ...thirtyAndTwenty, sett: endsPerCentimetre(0) })).toThrow(QuantityError);
  });
});

describe("a piece of cloth", () => {
  cited(
    "55 oz of warp with a quarter of size, 45 3/4 oz of weft",
    published(brooks1892, "ch. IX, weight of a piece", "7 lb 2 1/2 oz", "114.5"),
    pieceMass,
    [{ warp: ounces(55), size: percentAdded(25), weft: ounces("45.75") }],
    ounces,
  );
  cited(
    "room in a gram of a shirting",
    published(gateTextile, "2010, Q51", "3.62", "3.620405924300603400987383433900164563906"),
    specificVolume,
    [{ thicknessInCentimetres: 0.033, gramsPerSquareMetre: 91.15 }],
    null,
  );
  cited(
    "a hundred threads of six inches with 5 % of crimp, weighing five grains",
    { source: commonPractice, at: "worked by hand", status: "common practice, no source", prints: "", exact: "175/6" },
    countFromCloth,
    [
      {
        threads: 100,
        clothLength: inches(6),
        crimp: percentAdded(5),
        mass: grains(5),
        system: cottonCount,
      },
    ],
    cottonCount,
  );

  it("gives back the count it was woven with", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 200 }), fc.integer({ min: 0, max: 30 }), (count, percent) => {
        const crimp = percentAdded(percent);
        const perArea = warpMassPerArea({ sett: endsPerInch(40), count: cottonCount(count), crimp });
        const mass = ounces(perArea.in(ouncesPerSquareYard));
        const drawn = countFromCloth({ threads: 1440, clothLength: inches(36), crimp, mass, system: cottonCount });
        expect(drawn.in(cottonCount)).toBeCloseTo(count, 9);
      }),
    );
  });
});
