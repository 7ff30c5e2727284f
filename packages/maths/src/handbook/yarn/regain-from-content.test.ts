import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { gateTextile } from "#ci/sources.js";
import { grams, percentAdded, percentLost } from "../../units/index.js";
import { invoiceMass } from "./invoice-mass.js";
import { regainFromContent } from "./regain-from-content.js";
import { waterInYarn } from "./water-in-yarn.js";

describe("averages, contraction and regain", () => {
  cited(
    "regain of wool, silk and viscose with 12.28 g of water in 100 g",
    published(gateTextile, "2007, Q70", "12.28 g in 100 g", "14"),
    regainFromContent,
    [{ content: percentLost("12.28070175438596491228070175438596491") }],
    percentAdded,
  );
  it("a regain and the content it comes from are the same water", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 60 }), (content) => {
        const regain = regainFromContent({ content: percentLost(content) });
        expect(waterInYarn({ mass: grams(100), regain }).in(grams)).toBeCloseTo(content, 9);
        const same = invoiceMass({ mass: grams(100), content: percentLost(content), regain });
        expect(same.in(grams)).toBeCloseTo(100, 9);
      }),
    );
  });
});

describe("the limits of regain from content", () => {
  limits(regainFromContent, ["is none of a dry yarn", { content: percentLost(0) }, 0, percentAdded], {
    content: percentLost(100),
  });
});
