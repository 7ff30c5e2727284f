import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { osterkampSettRevisited, settSinglePage } from "#ci/sources.js";
import { endsPerInch, percentOf } from "../../units/index.js";
import { purposeShare } from "./purpose-share.js";
import { settForPurpose } from "./sett-for-purpose.js";

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
  it("gives a sett from the lower share to the upper, never closer than the closest", () => {
    const purposes = fc.constantFrom("ordinary", "upholstery", "delicate", "good working sett");
    fc.assert(
      fc.property(purposes, fc.integer({ min: 1, max: 400 }), (purpose, ends) => {
        const { from, to, source } = purposeShare({ purpose });
        const sett = (share: typeof from): number =>
          settForPurpose({ closest: endsPerInch(ends), share }).in(endsPerInch);
        expect(sett(from)).toBeLessThanOrEqual(sett(to));
        expect(sett(to)).toBeLessThan(ends);
        expect(source.title).not.toBe("");
      }),
    );
  });
  it("is of one share where the source gives one, and widest for delicate cloth: 50 to 60 ends of a hundred", () => {
    const { from, to } = purposeShare({ purpose: "upholstery" });
    expect(from).toEqual(to);
    const delicate = purposeShare({ purpose: "delicate" });
    const setts = [delicate.from, delicate.to].map((share) => settForPurpose({ closest: endsPerInch(100), share }));
    expect(setts.map((sett) => sett.in(endsPerInch))).toEqual([50, 60]);
  });
  it("is not to be had for a purpose no source speaks of", () => {
    expect(codesOf(purposeShare, { purpose: "rug" })).toEqual(["unknown-word purpose"]);
    expect(codesOf(purposeShare, { purpose: 80 })).toEqual(["wrong-kind purpose"]);
    expect(codesOf(purposeShare, {})).toEqual(["missing purpose"]);
  });
});
