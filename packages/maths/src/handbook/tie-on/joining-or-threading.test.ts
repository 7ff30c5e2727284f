import { describe, expect, it } from "vitest";
import { inches } from "../../units/index.js";
import { joiningOrThreading } from "./joining-or-threading.js";

describe("joining or threading afresh", () => {
  const hours = { knotsPerHour: 200, otherHoursJoining: 1, endsPerHourThreading: 180, otherHoursThreading: 0.5 };
  it("may cost hours and still save yarn, or the other way", () => {
    const found = joiningOrThreading({ ends: 360, ...hours, newWarpSpared: inches(18), oldWarpGivenUp: inches(8) });
    expect(found.hoursSaved).toBeCloseTo(-0.3, 12);
    expect(found.yarnSaved.in(inches)).toBe(3600);
    expect(found.says).toContain("0.3 hours more than threading afresh and saves 10 in of every end");
    const dear = joiningOrThreading({ ends: 360, ...hours, newWarpSpared: inches(8), oldWarpGivenUp: inches(18) });
    expect(dear.yarnSaved.in(inches)).toBe(-3600);
    expect(dear.says).toContain("saves no yarn");
  });
});
