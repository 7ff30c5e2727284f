import { grams, inches, kilograms, ounces, picksPerInch, pounds, yards } from "@thrum/maths";
import { expect, it } from "vitest";
import { amountText } from "./amount-text.js";

it("tells a length by the tape or by the yard, up or down, in the weaver's own unit", () => {
  // 18.4 in lies between 18 3/8 and 18 1/2, nearer the first; × 2.54 = 46.736 cm; ÷ 36 = 0.5111… yd, × 0.0254 = 0.46736 m.
  const width = inches("18.4");
  expect(amountText(width, "inches")).toBe("18 3/8 in");
  expect(amountText(width, "inches", { rounding: "roundUp" })).toBe("18 1/2 in");
  expect(amountText(width, "centimetres", { rounding: "roundDown" })).toBe("46.7 cm");
  expect(amountText(width, "inches", { by: "yard", rounding: "roundUp" })).toBe("0.52 yd");
  expect(amountText(width, "centimetres", { by: "yard" })).toBe("0.47 m");
  expect(amountText(yards("1403.641"), "inches", { by: "yard", rounding: "roundUp" })).toBe("1403.65 yd");
});

it("tells a mass in the unit of another mass of the same yarn", () => {
  // 1 lb = 453.59237 g; 500 g = 17.637 oz.
  expect(amountText(grams(500), "inches", { like: pounds(1), rounding: "roundUp" })).toBe("1 lb 2 oz");
  expect(amountText(pounds(1), "inches", { like: kilograms(1), rounding: "roundUp" })).toBe("454 g");
  expect(amountText(ounces(3), "centimetres")).toBe("3 oz");
});

it("tells a count as it is, and so many to a length with the length", () => {
  expect(amountText(368, "inches")).toBe("368");
  expect(amountText(picksPerInch(18), "inches")).toBe("18 picks per inch");
});
