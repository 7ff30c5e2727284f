import { describe, expect, it } from "vitest";
import { sleyFrom, sleyReading } from "./sley-from.js";

describe("a sleying order in writing", () => {
  it("counts neighbouring dents of one number together", () => {
    expect(sleyFrom("2-1-1")).toEqual({ dents: [1, 2], endsPerDent: [2, 1] });
    expect(sleyFrom(" 0 - 1 - 1 ")).toEqual({ dents: [1, 2], endsPerDent: [0, 1] });
    expect(sleyFrom("12")).toEqual({ dents: [1], endsPerDent: [12] });
  });
  it("is refused where it is no order", () => {
    for (const text of ["", "2-", "2,1", "-1", "1--2", "0-0", "1.5-1", "a-b", "1-2".repeat(200), "123"]) {
      expect(() => sleyFrom(text)).toThrow("the ends of each dent with hyphens between");
    }
    expect(() => sleyFrom(2 as never)).toThrow("Give the order as text");
    expect(sleyReading("2-1")).toMatchObject({ ok: true });
    expect(sleyReading("2,1").ok).toBe(false);
  });
});
