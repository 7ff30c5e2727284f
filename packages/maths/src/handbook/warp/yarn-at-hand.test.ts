import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import type { Citation } from "#ci/cited.js";
import { QuantityError } from "../../engine/refusal.js";
import { bergdala, brinton1919, commonPractice, warpingPlan2015, weaveSpinDance2012 } from "../../sources/index.js";
import { inches, metres, yards } from "../../units/index.js";
import { endsFromYarn } from "./ends-from-yarn.js";
import { extraYarnOfTurn } from "./extra-yarn-of-turn.js";
import { longestWarpByColour } from "./longest-warp-by-colour.js";
import { longestWarp } from "./longest-warp.js";
import { packagesByLength } from "./packages-by-length.js";
import { turnsForLength } from "./turns-for-length.js";

const worked = (exact: string): Citation => ({
  source: commonPractice,
  at: "worked by hand",
  status: "common practice, no source",
  prints: "",
  exact,
});

describe("what the yarn at hand allows", () => {
  cited(
    "a cone of 47,600 m that gives one end to each of seven beams",
    published(warpingPlan2015, "example 1", "6800", "6800"),
    longestWarp,
    [{ yarn: metres(47_600), ends: 7 }],
    metres,
  );
  cited("a hank of 720 m in a warp of 12 m", published(bergdala, "section on yarn", "60", "60"), endsFromYarn, [
    { yarn: metres(720), warpLength: metres(12) },
  ]);
  cited("a hank of 720 m in a warp of 11.1 m", worked("64"), endsFromYarn, [
    { yarn: metres(720), warpLength: metres("11.1") },
  ]);

  it("is the colour that runs out first: coal allows 5.2 yd, and 120 yd of ash stay", () => {
    const report = longestWarpByColour([
      { colour: "ash", ends: 300, yarn: yards(1680) },
      { colour: "coal", ends: 100, yarn: yards(520) },
    ]);
    expect(report.runsOutFirst).toBe("coal");
    expect(report.warp.in(yards)).toBe(5.2);
    expect(report.left.map(({ colour, yarn }) => [colour, yarn.in(yards)])).toEqual([
      ["ash", 120],
      ["coal", 0],
    ]);
    expect(report.steps.map((step) => step.calculation(step.input))).toHaveLength(2);
  });

  it("leaves no colour short, and the first none over, whatever the numbers", () => {
    const colour = fc.record({
      colour: fc.constantFrom("ash", "coal", "weld"),
      ends: fc.integer({ min: 1, max: 700 }),
      yarn: fc.integer({ min: 1, max: 9000 }).map((length) => yards(length)),
    });
    fc.assert(
      fc.property(fc.array(colour, { minLength: 1, maxLength: 6 }), (colours) => {
        const left = longestWarpByColour(colours).left.map(({ yarn }) => yarn.in(yards));
        expect(Math.min(...left)).toBe(0);
      }),
    );
  });

  it("is refused for no colours, a colour without a name, no ends and no yarn", () => {
    const one = { colour: "ash", ends: 300, yarn: yards(1680) };
    expect(() => longestWarpByColour([])).toThrow(/list of colours/u);
    expect(() => longestWarpByColour([{ ...one, colour: 3 as never }])).toThrow(/colours\[0\].colour/u);
    expect(() => longestWarpByColour([{ ...one, ends: 0 }])).toThrow(QuantityError);
    expect(() => longestWarpByColour([one, { ...one, yarn: yards(0) }])).toThrow(/colours\[1\]/u);
    expect(() => longestWarpByColour([{ ...one, more: 1 } as never])).toThrow(/more/u);
  });
});

describe("packages, spools and bobbins by length", () => {
  cited(
    "strips of 48 yards for a repeat of 36 inches at 12 yards to the inch",
    published(brinton1919, "chenille chapter", "9", "9"),
    packagesByLength,
    [{ needed: yards(432), packageLength: yards(48) }],
  );
  cited("a yard more takes another", worked("10"), packagesByLength, [
    { needed: yards(433), packageLength: yards(48) },
  ]);
});

describe("the turn of a reel as measured", () => {
  cited(
    "577 ends on a winder that turns eight inches too long",
    published(weaveSpinDance2012, "May 2012", "128", "1154/9"),
    extraYarnOfTurn,
    [{ ends: 577, turns: 1, measuredTurn: inches(80), nominalTurn: yards(2) }],
    yards,
  );
  cited(
    "10 ends of three turns, two inches too long",
    worked("60"),
    extraYarnOfTurn,
    [{ ends: 10, turns: 3, measuredTurn: inches(38), nominalTurn: inches(36) }],
    inches,
  );
  cited("seven yards in turns of 80 inches", worked("4"), turnsForLength, [
    { warpLength: yards(7), measuredTurn: inches(80) },
  ]);
  cited("eight yards in turns of 72 inches", worked("4"), turnsForLength, [
    { warpLength: yards(8), measuredTurn: inches(72) },
  ]);

  it("is refused where it is shorter than reckoned: then nothing is used beyond the plan", () => {
    const input = { ends: 100, turns: 1, measuredTurn: inches(70), nominalTurn: yards(2) };
    expect(() => extraYarnOfTurn(input)).toThrow(QuantityError);
  });
});
