import { describe, expect, it } from "vitest";
import { cited } from "#ci/cited.js";
import { osterkampSettRevisited } from "#ci/sources.js";
import { endsPerInch, percentOf } from "../../units/index.js";
import { purposeShare } from "./purpose-share.js";
import { settForPurpose } from "./sett-for-purpose.js";

describe("a sett for a purpose", () => {
  cited(
    "four fifths of the 26 of 8/2 cotton",
    {
      source: osterkampSettRevisited,
      at: "items 4 to 6",
      status: "read",
      prints: "",
      exact: "20.8",
    },
    settForPurpose,
    [{ closest: endsPerInch(26), share: percentOf(80) }],
    endsPerInch,
  );
  it("lies below the closest", () => {
    const closest = endsPerInch(26);
    expect(settForPurpose({ closest, share: purposeShare({ purpose: "ordinary" }).to }).in(endsPerInch)).toBe(20.8);
    expect(settForPurpose({ closest, share: percentOf(100) }).in(endsPerInch)).toBe(26);
    expect(() => settForPurpose({ closest, share: percentOf(101) })).toThrow("share");
  });
});
