import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { gateTextile } from "#ci/sources.js";
import { grams, percentAdded, percentLost } from "../../units/index.js";
import { contentFromRegain } from "./content-from-regain.js";
import { regainFromContent } from "./regain-from-content.js";
import { waterInYarn } from "./water-in-yarn.js";

describe("the moisture content of a yarn", () => {
  cited(
    "a regain of 14 % in 100 g of wool, silk and viscose",
    published(gateTextile, "2007, Q70", "12.28", "700/57"),
    contentFromRegain,
    [{ regain: percentAdded(14) }],
    percentLost,
  );

  it("is the water in a hundred parts of the mass as it is", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 300 }), (percent) => {
        const regain = percentAdded(percent);
        const content = contentFromRegain({ regain });
        expect(waterInYarn({ mass: grams(100), regain }).in(grams)).toBeCloseTo(content.in(percentLost), 9);
        expect(regainFromContent({ content }).in(percentAdded)).toBeCloseTo(percent, 9);
      }),
    );
  });

  it("of a dry yarn is nothing", () => {
    expect(contentFromRegain({ regain: percentAdded(0) }).value).toBe("0");
  });

  it("is refused from a content, which is no regain", () => {
    expect(() => contentFromRegain({ regain: percentLost(4) as never })).toThrow("regain");
  });
});
