import { describe } from "vitest";
import type { Citation } from "#ci/cited.js";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { vogl2001 } from "#ci/sources.js";
import { yards } from "../../units/index.js";
import { spoolLength } from "./spool-length.js";

describe("length of a spool", () => {
  const rows: readonly (readonly [title: string, Citation, sections: number])[] = [
    ["20 sections of 25 yards and half a yard cut off", published(vogl2001, "whole page", "510", "510"), 20],
    ["10 sections of 25 yards and half a yard cut off", published(vogl2001, "whole page", "255", "255"), 10],
  ];
  for (const [title, citation, sections] of rows) {
    cited(title, citation, spoolLength, [{ sections, warpLength: yards(25), cutWaste: yards("0.5") }], yards);
  }
});

describe("the limits of spool length", () => {
  limits(
    spoolLength,
    ["of one section without waste is the warp", { sections: 1, warpLength: yards(12), cutWaste: yards(0) }, 12, yards],
    { sections: 0, warpLength: yards(0), cutWaste: yards(-1) },
  );
});
