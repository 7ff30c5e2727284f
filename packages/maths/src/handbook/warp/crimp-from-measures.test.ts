import { describe, expect, it } from "vitest";
import type { Citation } from "#ci/cited.js";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { alhambraQuilts2014, brooks1892, hossen2015, textileindonesiaCrimp, wolfensberger1921 } from "#ci/sources.js";
import type { Length } from "../../units/index.js";
import { centimetres, inches, percentAdded, percentLost, yards } from "../../units/index.js";
import { crimpFromMeasures } from "./crimp-from-measures.js";
import { lossFromMeasures } from "./loss-from-measures.js";
import { takeUpFromCrimp } from "./take-up-from-crimp.js";

type Measures = readonly [title: string, Citation, longer: Length, shorter: Length];

describe("crimp on the cloth and take-up on the thread", () => {
  cited(
    "crimp of 10 cm of thread in 8 cm of cloth",
    published(textileindonesiaCrimp, "sense 2", "on the length of the fabric", "25"),
    crimpFromMeasures,
    [{ threadLength: centimetres(10), clothLength: centimetres(8) }],
    percentAdded,
  );
  it("are one difference on two bases", () => {
    const crimp = crimpFromMeasures({ threadLength: centimetres(10), clothLength: centimetres(8) });
    const takeUp = lossFromMeasures({ before: centimetres(10), after: centimetres(8) });
    expect(takeUpFromCrimp({ crimp }).in(percentLost)).toBe(takeUp.in(percentLost));
  });
});

describe("crimp of a thread drawn out", () => {
  const rows: readonly Measures[] = [
    [
      "21.2 cm of thread out of 20 cm of cloth",
      published(hossen2015, "problem 1", "6.0", "6"),
      centimetres("21.2"),
      centimetres(20),
    ],
    [
      "38 inches in the reed for 36 of cloth",
      published(brooks1892, "ch. IX, weight of a piece", "6", "50/9"),
      inches(38),
      inches(36),
    ],
    [
      "64 yards of warp for 60 of cloth",
      published(wolfensberger1921, "p. 88, disposition 4", "6 1/2", "20/3", "taken down to the half per cent"),
      yards(64),
      yards(60),
    ],
  ];
  for (const [title, citation, threadLength, clothLength] of rows) {
    cited(title, citation, crimpFromMeasures, [{ threadLength, clothLength }], percentAdded);
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

describe("the limits of crimp from measures", () => {
  limits(
    crimpFromMeasures,
    [
      "is none where thread and cloth are as long",
      { threadLength: inches(10), clothLength: inches(10) },
      0,
      percentAdded,
    ],
    { threadLength: inches(0), clothLength: inches(0) },
  );
});
