import { describe } from "vitest";
import type { Citation } from "#ci/cited.js";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { commonPractice, cupOnTheBus2018, vogl2001 } from "#ci/sources.js";
import { endsPerInch, inches } from "../../units/index.js";
import { endsPerSection } from "./ends-per-section.js";

const worked = (exact: string): Citation => ({
  source: commonPractice,
  at: "worked by hand",
  status: "common practice, no source",
  prints: "",
  exact,
});

describe("ends in a section", () => {
  const rows: readonly (readonly [title: string, Citation, sett: string, width: number])[] = [
    ["30 to the inch, sections of an inch", published(vogl2001, "whole page", "30", "30"), "30", 1],
    ["30 to the inch, sections of two inches", published(vogl2001, "whole page", "60", "60"), "30", 2],
    ["20 to the inch, sections of two inches", published(cupOnTheBus2018, "whole post", "40", "40"), "20", 2],
    ["12 1/2 to the inch, sections of an inch: half an end is none", worked("12"), "12.5", 1],
  ];
  for (const [title, citation, sett, width] of rows) {
    cited(title, citation, endsPerSection, [{ sett: endsPerInch(sett), sectionWidth: inches(width) }]);
  }
});

describe("the limits of ends per section", () => {
  limits(endsPerSection, ["are one in the room of one", { sett: endsPerInch(10), sectionWidth: inches("0.1") }, 1], {
    sett: endsPerInch(0),
    sectionWidth: inches(0),
  });
});
