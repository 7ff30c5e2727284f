import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import type { Citation } from "#ci/cited.js";
import {
  allFiberArts,
  brooks1892,
  cawsThrums2022,
  horsensVaevekreds,
  hortonPlacemats,
  jeanWeaves2014,
  measuredThreads,
  patrickFriendship,
  sammonsGather,
  sizing2014,
  spaceSavingMats,
  sparksearcherBalanced,
  stripedFloorCovering,
  weftHanded2010,
} from "#ci/sources.js";
import type { Unit } from "../../engine/quantity/index.js";
import { inUnit } from "../../engine/quantity/index.js";
import { feet, grams, inches, metres, ounces, pounds, yards } from "../../units/index.js";
import type { Length } from "../../units/index.js";
import { packagesToBuy } from "./packages-to-buy.js";
import { yarnForEnds } from "./yarn-for-ends.js";

type Row = readonly [title: string, Citation, ends: number, warpLength: Length, Unit<"length">];

const rows: readonly Row[] = [
  ["390 ends of 3 1/2 yards", published(allFiberArts, "whole page", "1365", "1365"), 390, yards("3.5"), yards],
  [
    "3250 ends of 36,000 yards",
    published(sizing2014, "problem A", "117000000", "117000000"),
    3250,
    yards(36_000),
    yards,
  ],
  [
    "550 ends of 3.2 metres",
    published(horsensVaevekreds, "whole page", "1210, then 1760", "1760"),
    550,
    metres("3.2"),
    metres,
  ],
];

describe("the yarn in so many ends", () => {
  cited(
    "2304 ends of 7 1/2 yards",
    { source: jeanWeaves2014, at: "whole post", status: "read", prints: "17280", exact: "17280" },
    yarnForEnds,
    [{ ends: 2304, warpLength: yards("7.5") }],
    yards,
  );
  cited(
    "450 ends of 10 yards",
    { source: weftHanded2010, at: "14 April 2010", status: "read", prints: "4500", exact: "4500" },
    yarnForEnds,
    [{ ends: 450, warpLength: yards(10) }],
    yards,
  );
  cited(
    "56 ends of 90 inches",
    { source: sparksearcherBalanced, at: "whole post", status: "read", prints: "140", exact: "140" },
    yarnForEnds,
    [{ ends: 56, warpLength: inches(90) }],
    yards,
  );
  cited(
    "99 ends of 60 inches",
    { source: hortonPlacemats, at: "project", status: "read", prints: "165", exact: "165" },
    yarnForEnds,
    [{ ends: 99, warpLength: inches(60) }],
    yards,
  );
  cited(
    "110 ends of 110 inches",
    {
      source: sammonsGather,
      at: "project",
      status: "read",
      prints: "340",
      exact: "3025/9",
      differs: "rounded up to 250 + 90 yd",
    },
    yarnForEnds,
    [{ ends: 110, warpLength: inches(110) }],
    yards,
  );
  cited(
    "82 ends of 110 inches",
    {
      source: sammonsGather,
      at: "project",
      status: "read",
      prints: "250",
      exact: "2255/9",
      differs: "rounded down, 0.6 yd short",
    },
    yarnForEnds,
    [{ ends: 82, warpLength: inches(110) }],
    yards,
  );
  cited(
    "528 ends of 4 yards",
    { source: measuredThreads, at: "whole entry", status: "read", prints: "2112", exact: "2112" },
    yarnForEnds,
    [{ ends: 528, warpLength: yards(4) }],
    yards,
  );
  cited(
    "3750 pieces of 38 yards",
    { source: brooks1892, at: "site page 96", status: "read", prints: "142500", exact: "142500" },
    yarnForEnds,
    [{ ends: 3750, warpLength: yards(38) }],
    yards,
  );
  cited(
    "414 ends of 5 2/3 yards",
    {
      source: patrickFriendship,
      at: "project",
      status: "read",
      prints: "2320",
      exact: "2346",
      differs: "misprint: 414 × 5 2/3 is 2346; rounded down by 26 yd",
    },
    yarnForEnds,
    [{ ends: 414, warpLength: inches(204) }],
    yards,
  );

  cited(
    "400 thrums of six feet",
    { source: cawsThrums2022, at: "opening", status: "read", prints: "2400", exact: "2400" },
    yarnForEnds,
    [{ ends: 400, warpLength: feet(6) }],
    feet,
  );

  for (const [title, citation, ends, warpLength, unit] of rows) {
    cited(title, citation, yarnForEnds, [{ ends, warpLength }], unit);
  }

  cited(
    "84 ends of 122 inches",
    published(spaceSavingMats, "project page", "285", "854/3"),
    yarnForEnds,
    [{ ends: 84, warpLength: inches(122) }],
    yards,
  );
  cited(
    "285 yards of warp in metres",
    published(spaceSavingMats, "project page", "260.5", "260.604", "0.914 m to the yard"),
    inUnit,
    [yards(285), metres],
    metres,
  );
  cited(
    "160 yards of warp in metres",
    published(stripedFloorCovering, "project page", "181", "146.304", "misprint: 181 metres are 198 yards"),
    inUnit,
    [yards(160), metres],
    metres,
  );

  it("is bought in whole packages, never one too few and never two too many", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 4000 }), fc.integer({ min: 1, max: 64 }), (needed, size) => {
        const packages = packagesToBuy({ needed: ounces(needed / 16), packageMass: ounces(size / 16) });
        expect(packages * size).toBeGreaterThanOrEqual(needed);
        expect((packages - 1) * size).toBeLessThan(Math.max(needed, 1));
      }),
    );
  });

  it("needs no package for no yarn, one for just a package, two for a grain more", () => {
    expect(packagesToBuy({ needed: grams(0), packageMass: ounces(8) })).toBe(0);
    expect(packagesToBuy({ needed: pounds("0.5"), packageMass: ounces(8) })).toBe(1);
    expect(packagesToBuy({ needed: pounds("0.50015"), packageMass: ounces(8) })).toBe(2);
  });

  it("is refused for a package of nothing and for a length of nothing", () => {
    expect(() => packagesToBuy({ needed: grams(1), packageMass: grams(0) })).toThrow("packageMass");
    expect(() => yarnForEnds({ ends: 4, warpLength: inches(0) })).toThrow("warpLength");
  });
});
