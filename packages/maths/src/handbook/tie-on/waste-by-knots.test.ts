import { describe, expect, it } from "vitest";
import { inches } from "../../units/index.js";
import { wasteByKnots } from "./waste-by-knots.js";

describe("waste by the place of the knots", () => {
  const usual = { wasteInFront: inches(10), wasteBehind: inches(18) };
  it("is spared at one end of the loom, never at both", () => {
    expect(wasteByKnots({ knotsTied: "in front of the reed", ...usual })).toMatchObject({ sparedAt: "back" });
    expect(wasteByKnots({ knotsTied: "in front of the reed", ...usual }).inAll.in(inches)).toBe(10);
    expect(wasteByKnots({ knotsTied: "behind the heddles", ...usual }).spared.in(inches)).toBe(10);
    expect(() => wasteByKnots({ knotsTied: "anywhere", ...usual } as never)).toThrow("where the knots are tied");
  });
});
