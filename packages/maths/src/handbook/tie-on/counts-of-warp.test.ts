import { describe, expect, it } from "vitest";
import { countsOfWarp } from "./counts-of-warp.js";

describe("the four counts of the old warp", () => {
  it("differ by doubled, floating and lost ends, and by crammed dents", () => {
    const counts = countsOfWarp({ ends: 384, sharingHeddle: 4, floating: 2, lost: 3, endsInEachDent: [2] });
    expect(counts).toMatchObject({ ends: 384, heddles: 378, dents: 192, knots: 381 });
    const crammed = { ends: 10, sharingHeddle: 0, floating: 0, lost: 0, endsInEachDent: [1, 4, 0] };
    expect(countsOfWarp(crammed).dents).toBe(5);
  });
  it("cannot hold more lost ends than there are", () => {
    const none = { ends: 3, sharingHeddle: 0, floating: 0, lost: 4, endsInEachDent: [2] };
    expect(() => countsOfWarp(none)).toThrow("more doubled, floating or lost ends than there are");
    expect(() => countsOfWarp({ ...none, lost: 0, endsInEachDent: [0] })).toThrow("only empty dents");
  });
});
