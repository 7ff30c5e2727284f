import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { blanco1917, brooks1892, weftHanded2010 } from "#ci/sources.js";
import { inUnit } from "../engine/quantity/index.js";
import { feet, inches, yards } from "./length.js";
import { longStickYards, woollenLongYards } from "./long-yards.js";

describe("the long yards of the cloth trade", () => {
  cited(
    "37 1/2 yards of the long stick",
    published(brooks1892, "p. 150, ch. IX", "38 1/4", "1825/48", "printed with a perhaps"),
    inUnit,
    [longStickYards("37.5"), yards],
    yards,
  );
  cited(
    "40 yards as long stick",
    published(brooks1892, "p. 156, ch. IX", "39", "2880/73", "the list takes whole yards"),
    inUnit,
    [yards(40), longStickYards],
    longStickYards,
  );
  cited(
    "40 yards of woollens, 42 yd 4 in",
    published(blanco1917, "p. 48", "1516", "1516"),
    inUnit,
    [woollenLongYards(40), inches],
    inches,
  );
  cited(
    "9000 yards of yarn in two cloaks",
    published(weftHanded2010, "14 April 2010", "27000", "27000"),
    inUnit,
    [yards(9000), feet],
    feet,
  );

  it("are longer than a yard by half an inch, and by an inch and nine tenths", () => {
    expect(longStickYards(1).in(inches)).toBe(36.5);
    expect(woollenLongYards(1).in(inches)).toBe(37.9);
  });
});
