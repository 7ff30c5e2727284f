import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { osterkampSettRevisited, settSinglePage } from "#ci/sources.js";
import { percentOf } from "../../units/index.js";
import { purposeShare } from "./purpose-share.js";

describe("a sett for a purpose", () => {
  cited(
    "ordinary cloth",
    published(osterkampSettRevisited, "items 4 to 6", "80 %", "80"),
    purposeShare,
    [{ purpose: "ordinary" }],
    ["to", percentOf],
  );
  cited(
    "upholstery",
    published(osterkampSettRevisited, "items 4 to 6", "90 %", "90"),
    purposeShare,
    [{ purpose: "upholstery" }],
    ["to", percentOf],
  );
  cited(
    "delicate cloth at the least",
    published(osterkampSettRevisited, "items 4 to 6", "50 %", "50"),
    purposeShare,
    [{ purpose: "delicate" }],
    ["from", percentOf],
  );
  cited(
    "delicate cloth at the most",
    published(osterkampSettRevisited, "items 4 to 6", "60 %", "60"),
    purposeShare,
    [{ purpose: "delicate" }],
    ["to", percentOf],
  );
  cited(
    "a good working sett",
    published(settSinglePage, "whole page", "about 3/4 or slightly more", "75"),
    purposeShare,
    [{ purpose: "good working sett" }],
    ["from", percentOf],
  );
  it("is not to be had for a purpose no source speaks of", () => {
    expect(() => purposeShare({ purpose: "rug" as never })).toThrow("ordinary");
  });
});
