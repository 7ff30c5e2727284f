import { describe, expect, it } from "vitest";
import { simulate } from "#ci/slip-simulation.js";

describe("claims made with one known slip each", () => {
  it("are named, and no right answer is accused", () => {
    const table = simulate({ seed: 60, inputs: 1, slips: 2 });
    for (const { claims, accused } of table) {
      expect(claims).toBeGreaterThan(200);
      expect(accused).toBe(0);
    }
    const shown = table.filter(({ figures }) => figures === 4).map(({ claims, hidden }) => claims - hidden);
    const found = table.filter(({ figures }) => figures === 4).map(({ unique, tied }) => unique + tied);
    expect((found[0] ?? 0) / (shown[0] ?? 0)).toBeGreaterThanOrEqual(0.95);
  });
});
