import { describe, expect, it } from "vitest";
import { cited } from "#ci/cited.js";
import { astmD2260, brooks1892, davis1920 } from "#ci/sources.js";
import { attempt } from "../../engine/refusal.js";
import { explain } from "../../engine/working/index.js";
import { cottonCount, denier, linenCount, tex, worstedCount } from "../../units/index.js";
import { convertCount } from "./convert-count.js";
import { countInSystem } from "./count-in-system.js";

describe("an indirect count in another indirect system", () => {
  cited(
    "24s worsted is 16s cotton",
    { source: davis1920, at: "Ex. 40, p. 53", status: "read", prints: "16", exact: "16" },
    countInSystem,
    [{ count: worstedCount(24), system: cottonCount }],
    cottonCount,
  );
  cited(
    "20s cotton is 56 lea",
    { source: brooks1892, at: "site page 91", status: "read", prints: "56", exact: "56" },
    countInSystem,
    [{ count: cottonCount(20), system: linenCount }],
    linenCount,
  );
  cited(
    "worsted ones are 1.86667 lea",
    { source: astmD2260, at: "Table 1", status: "read", prints: "1.86667", exact: "28/15" },
    countInSystem,
    [{ count: worstedCount(1), system: linenCount }],
    linenCount,
  );

  it("is what convertCount gives, to the last digits, and is explained", () => {
    const made = countInSystem({ count: cottonCount(20), system: worstedCount });
    expect(made.in(worstedCount)).toBeCloseTo(convertCount(cottonCount(20), worstedCount).count.in(worstedCount), 12);
    const { steps } = explain(countInSystem, { count: cottonCount(20), system: worstedCount });
    expect(steps.at(-1)?.numbers).toBe("16800 yd/lb × 1 lb ÷ 560 yd");
  });

  it("refuses a count of the other kind, of nothing, and a system of the other kind", () => {
    const wrong = attempt(countInSystem, { count: tex(20), system: denier });
    const places = wrong.ok ? [] : wrong.faults.map(({ code, path }) => [code, path[0]]);
    expect(places).toEqual([
      ["wrong-kind", "count"],
      ["wrong-kind", "system"],
    ]);
    const nothing = attempt(countInSystem, { count: cottonCount(0), system: worstedCount });
    expect(nothing.ok ? null : nothing.faults[0].code).toBe("out-of-range");
  });
});
