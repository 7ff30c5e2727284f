import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { percentAdded, percentLost } from "../../units/index.js";
import { hoursToWeave } from "./hours-to-weave.js";

describe("hours at the loom", () => {
  // 9000 ÷ 20 is 450 minutes of weaving; they are three quarters of 600.
  cited("9000 picks at 20 a minute, a quarter of the time lost", byHand(commonPractice, "10"), hoursToWeave, [
    { picks: 9000, picksPerMinute: 20, timeLost: percentLost(25) },
  ]);
  cited("1760 picks at 11 a minute, nothing lost", byHand(commonPractice, "8/3"), hoursToWeave, [
    { picks: 1760, picksPerMinute: 11, timeLost: percentLost(0) },
  ]);

  it("grow with the picks and the time lost, and never fall short of the weaving alone", () => {
    const size = { max: 20_000, min: 1 };
    fc.assert(
      fc.property(fc.integer(size), fc.integer({ min: 1, max: 90 }), fc.nat({ max: 90 }), (picks, speed, lost) => {
        const given = { picks, picksPerMinute: speed, timeLost: percentLost(lost) };
        const hours = hoursToWeave(given);
        expect(hours * 60 * speed).toBeGreaterThanOrEqual(picks * (1 - 1e-12));
        expect(hoursToWeave({ ...given, picks: picks + 1 })).toBeGreaterThan(hours);
        expect(hoursToWeave({ ...given, timeLost: percentLost(lost + 1) })).toBeGreaterThan(hours);
      }),
    );
  });

  it("are refused where all the time is lost, at no speed, and for a percentage added", () => {
    const given = { picks: 9000, picksPerMinute: 20, timeLost: percentLost(25) };
    expect(() => hoursToWeave({ ...given, timeLost: percentLost(100) })).toThrow("less than 100 %");
    expect(() => hoursToWeave({ ...given, picksPerMinute: 0 })).toThrow("more than 0");
    expect(() => hoursToWeave({ ...given, timeLost: percentAdded(25) as never })).toThrow("percentLost");
  });
});
