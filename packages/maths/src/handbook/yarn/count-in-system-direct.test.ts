import { describe, expect, it } from "vitest";
import { cited } from "#ci/cited.js";
import { gateTextile } from "#ci/sources.js";
import { attempt } from "../../engine/refusal.js";
import { explain } from "../../engine/working/index.js";
import { cottonCount, denier, metricCount, tex } from "../../units/index.js";
import { convertCount } from "./convert-count.js";
import { countInSystemDirect } from "./count-in-system-direct.js";

describe("a direct count in another direct system", () => {
  cited(
    "20 tex in denier",
    { source: gateTextile, at: "1992, Q2", status: "read", prints: "180", exact: "180" },
    countInSystemDirect,
    [{ count: tex(20), system: denier }],
    denier,
  );

  it("is what convertCount gives, to the last digits, and is explained", () => {
    const made = countInSystemDirect({ count: tex(20), system: denier });
    expect(made.in(denier)).toBeCloseTo(convertCount(tex(20), denier).count.in(denier), 12);
    const { steps } = explain(countInSystemDirect, { count: tex(20), system: denier });
    expect(steps.at(-1)?.numbers).toBe("20 g/km × 9 km ÷ 1 g");
  });

  it("refuses a count of the other kind, of nothing, and a system of the other kind", () => {
    const wrong = attempt(countInSystemDirect, { count: cottonCount(20), system: metricCount });
    const places = wrong.ok ? [] : wrong.faults.map(({ code, path }) => [code, path[0]]);
    expect(places).toEqual([
      ["wrong-kind", "count"],
      ["wrong-kind", "system"],
    ]);
    const nothing = attempt(countInSystemDirect, { count: tex(0), system: denier });
    expect(nothing.ok ? null : nothing.faults[0].code).toBe("out-of-range");
  });
});
