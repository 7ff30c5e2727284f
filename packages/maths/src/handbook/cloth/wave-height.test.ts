import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { gateTextile } from "#ci/sources.js";
import { millimetres, percentAdded } from "../../units/index.js";
import { threadFromCrimp } from "./thread-from-crimp.js";
import { waveHeight } from "./wave-height.js";

describe("a plain weave", () => {
  cited(
    "wave of a warp with 9 % of crimp over picks 0.4 mm apart",
    published(gateTextile, "2011, Q39, working", "0.16", "0.16"),
    waveHeight,
    [{ spacing: millimetres("0.4"), crimp: percentAdded(9), factor: 4 / 3 }],
    millimetres,
  );
  it("by the short rule is near the full equations only about 11 to 14 % of crimp", () => {
    const short = (crimp: number, spacing: number): number =>
      waveHeight({ spacing: millimetres(spacing), crimp: percentAdded(crimp), factor: 4 / 3 }).in(millimetres);
    const full = (crimp: number, spacing: number): number =>
      threadFromCrimp({
        spacing: millimetres(spacing),
        crimp: percentAdded(crimp),
        diameters: millimetres(1),
      }).height.in(millimetres);
    expect(short(14, 1) / full(14, 1)).toBeCloseTo(1.01, 2);
    expect(short(4, 2) / full(4, 2)).toBeLessThan(0.96);
  });
});

describe("the limits of wave height", () => {
  limits(
    waveHeight,
    [
      "is nothing where the thread lies straight",
      { spacing: millimetres(1), crimp: percentAdded(0), factor: 1.36 },
      0,
      millimetres,
    ],
    { spacing: millimetres(0), crimp: percentAdded(-1), factor: 0 },
  );
});
