import { describe, expect, it } from "vitest";
import { cited } from "#ci/cited.js";
import { astmD2260, wcoHeading5205 } from "#ci/sources.js";
import { attempt } from "../../engine/refusal.js";
import { explain } from "../../engine/working/index.js";
import { decitex, metricCount, tex, worstedCount, yardsPerPound } from "../../units/index.js";
import { convertCount } from "./convert-count.js";
import { directFromIndirect } from "./direct-from-indirect.js";

describe("a direct count from an indirect one", () => {
  cited(
    "worsted ones in tex",
    { source: astmD2260, at: "Table 1", status: "read", prints: "885.812", exact: "32399455/36576" },
    directFromIndirect,
    [{ count: worstedCount(1), system: tex }],
    tex,
  );
  cited(
    "one yard to the pound in tex",
    { source: astmD2260, at: "Table 1", status: "read", prints: "496055", exact: "1133980925/2286" },
    directFromIndirect,
    [{ count: yardsPerPound(1), system: tex }],
    tex,
  );
  cited(
    "metric 14 in decitex",
    { source: wcoHeading5205, at: "heading 52.05", status: "read", prints: "714.29", exact: "5000/7" },
    directFromIndirect,
    [{ count: metricCount(14), system: decitex }],
    decitex,
  );

  it("is what convertCount gives, to the last digits, and is explained", () => {
    const made = directFromIndirect({ count: metricCount(14), system: decitex });
    expect(made.in(decitex)).toBeCloseTo(convertCount(metricCount(14), decitex).count.in(decitex), 12);
    const { steps } = explain(directFromIndirect, { count: metricCount(14), system: decitex });
    expect(steps.at(-1)?.numbers).toBe("10000 m ÷ 14000 m/kg ÷ 0.001 kg");
  });

  it("refuses a count of the other kind, of nothing, and a system of the other kind", () => {
    const wrong = attempt(directFromIndirect, { count: tex(20), system: worstedCount });
    const places = wrong.ok ? [] : wrong.faults.map(({ code, path }) => [code, path[0]]);
    expect(places).toEqual([
      ["wrong-kind", "count"],
      ["wrong-kind", "system"],
    ]);
    const nothing = attempt(directFromIndirect, { count: metricCount(0), system: decitex });
    expect(nothing.ok ? null : nothing.faults[0].code).toBe("out-of-range");
  });
});
