import { describe, expect, it } from "vitest";
import type { Citation } from "#ci/cited.js";
import { cited, published } from "#ci/cited.js";
import {
  carpenter2008,
  cnch2016,
  durhamWeaver,
  filBoutABout2023,
  mlnxbWeavingShrinkage,
  osterkampShrinkage,
  roberts1912,
  rogueWeaver2025,
  schoolOfWeaving,
  taylor1909,
  wolfensberger1921,
  yarnTails2009,
} from "#ci/sources.js";
import type { Length } from "../../units/index.js";
import { centimetres, inches, metres, percentLost, yards } from "../../units/index.js";
import { lossFromMeasures } from "./loss-from-measures.js";

type Measures = readonly [title: string, Citation, longer: Length, shorter: Length];

describe("crimp on the cloth and take-up on the thread", () => {
  cited(
    "weaving shrinkage of 10 cm of thread in 8 cm of cloth",
    published(mlnxbWeavingShrinkage, "formulas 1 and 2", "(L1 − L2) ÷ L1, L1 the straightened thread", "20"),
    lossFromMeasures,
    [{ before: centimetres(10), after: centimetres(8) }],
    percentLost,
  );
});

describe("the loss between two measures", () => {
  const rows: readonly Measures[] = [
    ["ten inches that come out at eight", published(cnch2016, "opening section", "20", "20"), inches(10), inches(8)],
    [
      "ten inches that come out at 8 1/2",
      published(osterkampShrinkage, "whole text", "15", "15"),
      inches(10),
      inches("8.5"),
    ],
    [
      "fourteen inches that come out at 11 1/2",
      published(yarnTails2009, "whole post", "18", "125/7"),
      inches(14),
      inches("11.5"),
    ],
    [
      "95 yards of warp for 90 of cloth",
      published(taylor1909, "p. 245 of the copy", "a little over 5", "100/19"),
      yards(95),
      yards(90),
    ],
    [
      "300 metres of warp for 315 yards of cloth, called a gain",
      published(
        wolfensberger1921,
        "p. 103",
        "a gain of 3 to 7 per cent",
        "997/250",
        "misprint: metres of warp are set against yards of cloth; in one unit the cloth is 4 % shorter",
      ),
      metres(300),
      yards(315),
    ],
  ];
  for (const [title, citation, before, after] of rows) {
    cited(title, citation, lossFromMeasures, [{ before, after }], percentLost);
  }
  it("is refused where the second measure is the longer, which is no loss", () => {
    expect(() => lossFromMeasures({ before: inches(8), after: inches(10) })).toThrow("a percentage lost");
  });
});

describe("what a cloth lost, by two measures", () => {
  const narrowed = { before: inches(14), after: inches(11) };
  const estimates = "the two estimates of the question, 9 and 12, added";
  cited(
    "a cloth of 11 in from 14 in the reed",
    published(schoolOfWeaving, "question", "21", "150/7", estimates),
    lossFromMeasures,
    [narrowed],
    percentLost,
  );
});

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
