import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { currency } from "../../units/index.js";
import { costsTogether } from "./costs-together.js";

const EUR = currency("EUR");

describe("costs together", () => {
  cited(
    "yarn, work and labels",
    byHand(commonPractice, "167.5"),
    costsTogether,
    [{ costs: [EUR(64), EUR(90), EUR("13.50")] }],
    EUR,
  );

  it("do not depend on their order", () => {
    fc.assert(
      fc.property(fc.array(fc.nat(900), { minLength: 1, maxLength: 8 }), (costs) => {
        const [one, other] = [costs, [...costs].reverse()].map((list) =>
          costsTogether({ costs: list.map((n) => EUR(n)) }),
        );
        expect(String(one)).toBe(String(other));
      }),
    );
  });

  it("are refused for none at all, and for two currencies", () => {
    expect(() => costsTogether({ costs: [] })).toThrow("a list of at least one");
    expect(() => costsTogether({ costs: [EUR(1), currency("GBP")(1)] })).toThrow("expected money in EUR");
  });
});
