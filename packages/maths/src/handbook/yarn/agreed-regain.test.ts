import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { faultsOf } from "#ci/faults-of.js";
import { astmD1909, euFibreNames } from "#ci/sources.js";
import type { QuantityError } from "../../engine/refusal.js";
import { percentAdded } from "../../units/index.js";
import { agreedRegain } from "./agreed-regain.js";

describe("the regain agreed on for a fibre", () => {
  cited(
    "carded wool in the European Union",
    published(euFibreNames, "worked ternary example", "17.0", "17"),
    agreedRegain,
    [{ convention: "EU 1007/2011", fibre: "carded wool" }],
    ["regain", percentAdded],
  );
  cited(
    "polyamide in the European Union",
    published(euFibreNames, "worked ternary example", "6.25", "6.25"),
    agreedRegain,
    [{ convention: "EU 1007/2011", fibre: "polyamide staple" }],
    ["regain", percentAdded],
  );
  cited(
    "cotton in the European Union",
    published(euFibreNames, "worked ternary example", "8.5", "8.5"),
    agreedRegain,
    [{ convention: "EU 1007/2011", fibre: "cotton" }],
    ["regain", percentAdded],
  );
  cited(
    "wool in America",
    published(astmD1909, "wool", "13.6", "13.6"),
    agreedRegain,
    [{ convention: "ASTM D1909", fibre: "wool" }],
    ["regain", percentAdded],
  );

  it("is another for the same fibre elsewhere, and says whether it was read there", () => {
    const [european, american] = (["EU 1007/2011", "ASTM D1909"] as const).map((convention) =>
      agreedRegain({ convention, fibre: "jute" }),
    );
    expect(european?.regain.value).toBe("17");
    expect(american?.regain.value).toBe("13.75");
    expect(american?.status).toBe("from memory");
    expect(Object.isFrozen(european)).toBe(true);
  });

  it("stands for every fibre named in its refusal, and for no name cut short", () => {
    const convention = fc.constantFrom("EU 1007/2011" as const, "ASTM D1909" as const);
    const fibre = fc.constantFrom("acetate", "acrylic", "flax", "hemp", "jute", "polyester", "silk", "viscose");
    fc.assert(
      fc.property(convention, fibre, fc.nat({ max: 3 }), (by, name, letters) => {
        const { regain, source } = agreedRegain({ convention: by, fibre: name });
        expect([regain.in(percentAdded) > 0, regain.in(percentAdded) <= 17, source]).toEqual([
          true,
          true,
          by === "ASTM D1909" ? astmD1909 : euFibreNames,
        ]);
        const [cut] = faultsOf(agreedRegain, { convention: by, fibre: name.slice(0, letters) });
        expect(cut).toContain(`"${name}"`);
      }),
    );
  });

  it.each([
    [{ convention: "EU 1007/2011", fibre: "wool" }, "ambiguous", "carded wool or combed wool"],
    [{ convention: "ASTM D1909", fibre: "cotton" }, "no-answer", "yourself"],
    [{ convention: "EU 1007/2011", fibre: "nettle" }, "unknown-word", "carded wool"],
    [{ convention: "EU 1007/2011", fibre: "toString" }, "unknown-word", "carded wool"],
    [{ convention: "everywhere", fibre: "wool" }, "unknown-word", "ASTM D1909"],
    [{ convention: "EU 1007/2011" }, "missing", "fibre"],
    [{ convention: "EU 1007/2011", fibre: "cotton", colour: "red" }, "unknown-field", "colour"],
    [null, "missing", "convention"],
  ])("%j is refused", (of, code, named) => {
    try {
      agreedRegain(of as never);
      expect.unreachable();
    } catch (error) {
      expect((error as QuantityError).code).toBe(code);
      expect((error as QuantityError).message).toContain(named);
    }
  });

  it("is refused with the fibres the convention knows", () => {
    expect(faultsOf(agreedRegain, { fibre: "glass" })).toEqual([
      'agreedRegain({ convention }): "EU 1007/2011" or "ASTM D1909"',
      expect.stringMatching(/^agreedRegain\(\{ fibre \}\): "carded wool" or .* or "nylon"$/u),
    ]);
    expect(faultsOf(agreedRegain, { convention: "ASTM D1909", fibre: "cotton" })).toEqual([
      "agreedRegain({ fibre }): a fibre of ASTM D1909: wool, jute, polyester, acetate, acrylic, flax, hemp, nylon, silk, triacetate, viscose",
    ]);
  });
});
