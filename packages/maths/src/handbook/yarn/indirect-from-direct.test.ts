import { describe, expect, it } from "vitest";
import { cited } from "#ci/cited.js";
import { gateTextile, groenKennisnet } from "#ci/sources.js";
import { attempt } from "../../engine/refusal.js";
import { explain } from "../../engine/working/index.js";
import { cottonCount, denier, metricCount, tex } from "../../units/index.js";
import { convertCount } from "./convert-count.js";
import { indirectFromDirect } from "./indirect-from-direct.js";

describe("an indirect count from a direct one", () => {
  cited(
    "20 tex in cotton count",
    { source: gateTextile, at: "1992, Q2", status: "read", prints: "29.5", exact: "6479891/219456" },
    indirectFromDirect,
    [{ count: tex(20), system: cottonCount }],
    cottonCount,
  );
  cited(
    "20 tex in metric count",
    { source: gateTextile, at: "1992, Q2", status: "read", prints: "50", exact: "50" },
    indirectFromDirect,
    [{ count: tex(20), system: metricCount }],
    metricCount,
  );
  cited(
    "30 tex in metric count",
    { source: groenKennisnet, at: "calculation example", status: "read", prints: "33", exact: "100/3" },
    indirectFromDirect,
    [{ count: tex(30), system: metricCount }],
    metricCount,
  );

  it("is what convertCount gives, to the last digits, and is explained", () => {
    const made = indirectFromDirect({ count: tex(20), system: metricCount });
    expect(made.in(metricCount)).toBeCloseTo(convertCount(tex(20), metricCount).count.in(metricCount), 12);
    const { steps } = explain(indirectFromDirect, { count: tex(20), system: metricCount });
    expect(steps.at(-1)?.numbers).toBe("1000 g ÷ 20 g/km ÷ 1 km");
  });

  it("refuses a count of the other kind, of nothing, and a system of the other kind", () => {
    const wrong = attempt(indirectFromDirect, { count: cottonCount(20), system: denier });
    const places = wrong.ok ? [] : wrong.faults.map(({ code, path }) => [code, path[0]]);
    expect(places).toEqual([
      ["wrong-kind", "count"],
      ["wrong-kind", "system"],
    ]);
    const nothing = attempt(indirectFromDirect, { count: tex(0), system: metricCount });
    expect(nothing.ok ? null : nothing.faults[0].code).toBe("out-of-range");
  });
});
