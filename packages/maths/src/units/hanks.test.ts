import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import type { Citation } from "#ci/cited.js";
import { blanco1917, britannica1911, brooks1892, taylor1909 } from "#ci/sources.js";
import { inUnit } from "../engine/quantity/index.js";
import type { Unit } from "../engine/quantity/index.js";
import { cottonHanks, cottonLeas, linenBundles, linenLeas } from "./hanks.js";
import { inches, yards } from "./length.js";
import type { Length } from "./kinds.js";

const rows: readonly (readonly [title: string, Citation, Length, Unit<"length">])[] = [
  ["a lea of cotton", published(blanco1917, "p. 17", "4320", "4320"), cottonLeas(1), inches],
  ["a hank of cotton", published(blanco1917, "p. 17", "30240", "30240"), cottonHanks(1), inches],
  ["a lea of linen", published(britannica1911, "article", "300", "300"), linenLeas(1), yards],
  ["a bundle of linen in leas", published(britannica1911, "article", "200", "200"), linenBundles(1), linenLeas],
  [
    "2280 ends of 38 yards",
    published(brooks1892, "ch. IX, weight of a piece", "103 1/7", "722/7"),
    yards(2280 * 38),
    cottonHanks,
  ],
  [
    "2080 ends of 41 yards",
    published(brooks1892, "ch. IX, weight of a piece", "101 1/2", "2132/21", "taken to the half hank"),
    yards(2080 * 41),
    cottonHanks,
  ],
  [
    "2100 ends of 95 yards",
    published(taylor1909, "p. 313, ch. XII", "237 1/2", "237.5"),
    yards(2100 * 95),
    cottonHanks,
  ],
];

describe("the lengths a reel measures off", () => {
  for (const [title, citation, length, unit] of rows) cited(title, citation, inUnit, [length, unit], unit);

  it("are whole parts of each other: seven leas of cotton to the hank", () => {
    expect(cottonHanks(1).in(cottonLeas)).toBe(7);
  });
});
