import { describe, expect, it } from "vitest";
import { faultsOf } from "#ci/faults-of.js";
import { astmD1909, euFibreNames } from "#ci/sources.js";
import { cottonCount, inches, metricCount, tex, worstedCount } from "../../units/index.js";
import { agreedRegain, convertCount, diameterConstant, yarnCount, yarnFrom } from "./index.js";

describe("what a sum of the yarn wants and does not get is named, with what it is", () => {
  it("of a yarn", () => {
    expect(faultsOf(yarnCount, { plies: 0 })).toEqual([
      "yarnCount({ count }): a yarn count",
      "yarnCount({ plies }): a whole number of plies, 1 or more",
      'yarnCount({ counted }): "single" or "finished thread"',
    ]);
  });

  it("of an agreed regain, with the fibres the convention knows", () => {
    expect(faultsOf(agreedRegain, { fibre: "glass" })).toEqual([
      'agreedRegain({ convention }): "EU 1007/2011" or "ASTM D1909"',
      expect.stringMatching(/^agreedRegain\(\{ fibre \}\): "carded wool" or .* or "nylon"$/u),
    ]);
    expect(faultsOf(agreedRegain, { convention: "ASTM D1909", fibre: "cotton" })).toEqual([
      "agreedRegain({ fibre }): a fibre of ASTM D1909: wool, jute, polyester, acetate, acrylic, flax, hemp, nylon, silk, triacetate, viscose",
    ]);
    expect(agreedRegain({ convention: "ASTM D1909", fibre: "wool" }).source).toEqual(astmD1909);
    expect(agreedRegain({ convention: "EU 1007/2011", fibre: "cotton" }).source).toEqual(euFibreNames);
  });

  it("of a diameter constant, with those who give one", () => {
    expect(faultsOf(diameterConstant, {})).toEqual([
      'diameterConstant({ material }): "cotton" or "worsted" or "woollen"',
      'diameterConstant({ givenBy }): "Taylor" or "faena" or "SweetGeorgia" or "quiltingclimber"',
    ]);
    const taylor = { givenBy: "Taylor", material: "worsted" } as const;
    expect(faultsOf(diameterConstant, taylor)).toEqual([
      "diameterConstant({ givenBy }): one who gives a constant for worsted",
    ]);
    expect(() => diameterConstant(taylor)).toThrow(
      /It is given by faena 0\.9, SweetGeorgia 0\.9, quiltingclimber 0\.9\.$/u,
    );
  });

  it("of a count to be converted, with what a count is", () => {
    const of = (count: unknown, unit: unknown): readonly string[] =>
      faultsOf(() => convertCount(count as never, unit as never), {});
    expect(of(20, tex)).toEqual(["convertCount({ count }): a yarn count"]);
    expect(of(tex(20), inches)).toEqual(["convertCount({ unit }): a count system"]);
    expect(of(tex(0), tex)).toEqual(["convertCount({ count }): a count above zero"]);
    expect(() => convertCount(inches(2) as never, tex)).toThrow("Counts are of a system: tex(30), cottonCount(20).");
    for (const [count, unit, code] of [
      [20, tex, "wrong-kind"],
      [tex(20), inches, "wrong-kind"],
      [tex(0), tex, "out-of-range"],
    ] as const)
      expect(() => convertCount(count as never, unit as never)).toThrow(expect.objectContaining({ code }) as Error);
  });
});

it("an exact conversion of a count is written with an equals sign, a rounded one is not", () => {
  expect(convertCount(tex(50), metricCount).says).toBe("1000 ÷ 50 tex = 20 Nm");
  expect(convertCount(tex(30), metricCount).says).toBe("1000 ÷ 30 tex ≈ 33.3333 Nm");
  expect(convertCount(worstedCount(3), cottonCount).says).toBe("3 worsted count × 0.666667 ≈ 2 Ne");
  // The constant, 590.541…, does not end; that its own tex makes 1 Ne does not make the sum exact.
  expect(convertCount(cottonCount(1), tex).says).toBe("590.541 ÷ 1 Ne ≈ 590.541 tex");
});

describe("a label", () => {
  const how = { order: "count first", system: cottonCount, counted: "single" } as const;
  const wanted = "yarnFrom({ label }): the numbers of a yarn, such as 2/40s or 8/2";
  const remedy = (label: unknown, by: object = how): string => {
    const lines = { text: "" };
    try {
      yarnFrom(label as never, by as never);
    } catch (error) {
      lines.text = (error as { remedy: string }).remedy;
    }
    return lines.text;
  };

  it("wants its order, system and meaning stated", () => {
    expect(faultsOf(() => yarnFrom("8/2", {} as never), {})).toEqual([
      'yarnFrom({ how.order }): "plies first" or "count first"',
      "yarnFrom({ how.system }): a unit for an indirect count",
      'yarnFrom({ how.counted }): "single" or "finished thread"',
    ]);
    expect(faultsOf(() => yarnFrom("8/2", undefined as never), {})).toHaveLength(3);
    expect(faultsOf(() => yarnFrom("8/2", { ...how, system: { ...tex } } as never), {})).toEqual([
      "yarnFrom({ how.system }): a unit for a direct count",
    ]);
  });

  it("is refused with what is to be done where it cannot be read", () => {
    for (const label of ["8/", "8/0", "0/2", "No. 30", 8, "8".repeat(41), "8/2s"])
      expect(faultsOf(() => yarnFrom(label as never, how), {})).toEqual([wanted]);
    expect(remedy("8/")).toBe("");
    expect(remedy(8)).toBe("Give the label as text.");
    expect(remedy(`8/2${" ".repeat(38)}`)).toBe("Give the label as text.");
    expect(remedy(" No. 30")).toBe("A ticket number is no count: find the count it stands for.");
    expect(remedy("8/0")).toBe("The plies are a whole number, 1 or more.");
    expect(remedy("8/1.5")).toBe("The plies are a whole number, 1 or more.");
    expect(remedy("0/2")).toBe("A count is more than nothing.");
    expect(remedy("8/2s")).toBe("The s marks the count, but the order stated is count first.");
    expect(remedy("8s/2", { ...how, order: "plies first" })).toBe(
      "The s marks the count, but the order stated is plies first.",
    );
  });

  it("may have blanks around it, 40 letters in all, a single with its mark in either order, and a dozen plies", () => {
    expect(yarnFrom(` 8/2${" ".repeat(36)}`, how).plies).toBe(2);
    expect(yarnFrom("20s", { ...how, order: "plies first" }).plies).toBe(1);
    expect(yarnFrom("8/12", how).plies).toBe(12);
  });
});
