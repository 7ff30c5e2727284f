import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import type { Citation } from "#ci/cited.js";
import {
  alhambraQuilts2014,
  brown1923,
  carpenter2008,
  durhamWeaver,
  encyclopedie1765,
  filBoutABout2023,
  roberts1912,
  rogueWeaver2025,
  wheeler1908,
  wolfensberger1921,
} from "../../sources/index.js";
import { centimetres, inches, percentAdded, percentLost, yards } from "../../units/index.js";
import type { Length } from "../../units/index.js";
import { crimpFromMeasures } from "./crimp-from-measures.js";
import { lossFromMeasures } from "./loss-from-measures.js";
import { sectionsInWarp } from "./sections-in-warp.js";
import { splitOverBeams } from "./split-over-beams.js";
import { warpLengthForSizes } from "./warp-length-for-sizes.js";

type Measures = readonly [title: string, Citation, longer: Length, shorter: Length];

describe("the loss between two printed measures", () => {
  const plans = "pp. 204-205, plans of fig. 62";
  const june2014 = "June 2014, red and white tea towels";
  const rows: readonly Measures[] = [
    ["worsted in plan A, 32 in to 30", published(roberts1912, plans, "30 in", "6.25"), inches(32), inches(30)],
    ["worsted in plan B, 32 in to 30", published(roberts1912, plans, "30 in", "6.25"), inches(32), inches(30)],
    ["worsted in a warp cord, 32 in to 32", published(roberts1912, plans, "32 in", "0"), inches(32), inches(32)],
    [
      "crepe de chine, 44 1/2 in to 40",
      published(wolfensberger1921, "p. 109, disposition 9", "40 from 44 1/2 in", "900/89"),
      inches("44.5"),
      inches(40),
    ],
    [
      "crepe georgette, 47 in to 40",
      published(wolfensberger1921, "p. 109, disposition 10", "40 from 47 in", "700/47"),
      inches(47),
      inches(40),
    ],
    [
      "cottolin in the wash, length",
      published(durhamWeaver, june2014, "27 to 25.5", "50/9"),
      inches(27),
      inches("25.5"),
    ],
    [
      "cottolin in the wash, width",
      published(durhamWeaver, june2014, "22.75 to 21.25", "600/91"),
      inches("22.75"),
      inches("21.25"),
    ],
    [
      "a cloth washed twice, width",
      published(carpenter2008, "measurements", "27 to 24", "100/9"),
      inches(27),
      inches(24),
    ],
    [
      "a cloth washed twice, length",
      published(carpenter2008, "measurements", "37 to 31", "600/37"),
      inches(37),
      inches(31),
    ],
    [
      "a rug that draws in by 10 cm on 54",
      published(filBoutABout2023, "whole post", "10 cm on 54", "500/27"),
      centimetres(54),
      centimetres(44),
    ],
    [
      "a wool scarf let off the loom",
      published(rogueWeaver2025, "whole post", "75 in woven, 65 in released", "40/3"),
      inches(75),
      inches(65),
    ],
  ];
  for (const [title, citation, before, after] of rows) {
    cited(title, citation, lossFromMeasures, [{ before, after }], percentLost);
  }
});

describe("a quilt on two beams", () => {
  const warps = [
    ["figuring warp, 120 yards for 100", 120, "20"],
    ["ground warp, 105 yards for 100", 105, "5"],
  ] as const;
  for (const [title, thread, exact] of warps) {
    const citation = published(alhambraQuilts2014, "entry", `${String(thread)} yd for 100`, exact);
    cited(title, citation, crimpFromMeasures, [{ threadLength: yards(thread), clothLength: yards(100) }], percentAdded);
  }
});

describe("a warp shared out", () => {
  cited(
    "150 face threads of elastic webbing on two warps",
    published(brown1923, "p. 33", "75", "75,75"),
    splitOverBeams,
    [{ ends: 150, mostPerBeam: 75 }],
    "endsOnEach",
  );
  const lyons = "vol. 15, velvets";
  cited("800 pile ends of velvet in portées of 80", published(encyclopedie1765, lyons, "10", "10"), sectionsInWarp, [
    { ends: 800, endsPerSection: 80 },
  ]);
  cited(
    "6400 ground ends of velvet in double portées of 160",
    published(encyclopedie1765, lyons, "40", "40"),
    sectionsInWarp,
    [{ ends: 6400, endsPerSection: 160 }],
  );
  const nothingLost = {
    sample: inches(0),
    loomToFinished: percentLost(0),
    takeUp: percentLost(0),
    loomWaste: inches(0),
  };
  cited(
    "four rugs of six feet with five inches of fringe at each end",
    published(wheeler1908, "p. 34", "5 in first, 10 in between two rugs", "328"),
    warpLengthForSizes,
    [
      {
        ...nothingLost,
        pieces: [4],
        finishedLength: [inches(72)],
        hemEachEnd: [inches(0)],
        fringeEachEnd: [inches(5)],
      },
    ],
    inches,
  );
});
