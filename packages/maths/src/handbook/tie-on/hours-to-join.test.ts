import { describe, expect, it } from "vitest";
import { hoursToJoin } from "./hours-to-join.js";

describe("joining or threading afresh", () => {
  it("takes as many hours as knots and rate say", () => {
    // AVL's goal of 200 to 250 ends an hour prints no hours; these are by hand.
    expect(hoursToJoin({ knots: 450, knotsPerHour: 250 })).toBe(1.8);
    expect(hoursToJoin({ knots: 450, knotsPerHour: 200 })).toBe(2.25);
  });
});
