import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { durhamWeaver } from "#ci/sources.js";
import { inches, picksPerInch } from "../../units/index.js";
import { lengthOfPicks } from "./length-of-picks.js";
import { picksFromGlass } from "./picks-from-glass.js";
import { picksInLength } from "./picks-in-length.js";

describe("picks", () => {
  cited(
    "634 picks at 20 to the inch",
    published(durhamWeaver, "11 June 2014", "about 32", "31.7"),
    lengthOfPicks,
    [{ picksInAll: 634, picks: picksPerInch(20) }],
    inches,
  );
  it("weave the length they were counted for", () => {
    const picks = picksPerInch(18);
    expect(lengthOfPicks({ picksInAll: picksInLength({ wovenLength: inches(30), picks }), picks }).in(inches)).toBe(30);
    expect(() => lengthOfPicks({ picksInAll: 1.5, picks })).toThrow("picksInAll");
    expect(() => picksFromGlass({ counted: 0, glass: inches(1) })).toThrow("counted");
  });
});
