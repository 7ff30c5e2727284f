import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { faultsOf } from "#ci/faults-of.js";
import {
  alessandrinaCounts,
  brooks1892,
  davis1920,
  dooley1914,
  elkinsWebs,
  petriniYarnSystems,
  rudeOddCounts,
  rugtalkYarnSize,
  sizesYarnNumbers,
  taylor1909,
  tbunnyCounts,
  textileindonesiaCount,
} from "#ci/sources.js";
import type { QuantityError } from "../../engine/refusal.js";
import {
  cottonCount,
  inches,
  linenCount,
  metricCount,
  spunSilkCount,
  tex,
  woollenCut,
  worstedCount,
  yardsPerPound,
} from "../../units/index.js";
import { resultantCount } from "./resultant-count.js";
import { yarnCount } from "./yarn.js";

describe("a yarn", () => {
  cited(
    "3/2 cotton",
    { source: elkinsWebs, at: "whole page", status: "read", prints: "1260", exact: "1260" },
    yarnCount,
    [{ count: cottonCount(3), plies: 2, counted: "single" }],
    yardsPerPound,
  );
  cited(
    "2/20 cotton",
    { source: tbunnyCounts, at: "whole page", status: "read", prints: "8400", exact: "8400" },
    yarnCount,
    [{ count: cottonCount(20), plies: 2, counted: "single" }],
    yardsPerPound,
  );
  cited(
    "2/40 linen",
    { source: tbunnyCounts, at: "whole page", status: "read", prints: "6000", exact: "6000" },
    yarnCount,
    [{ count: linenCount(40), plies: 2, counted: "single" }],
    yardsPerPound,
  );
  cited(
    "20/2 worsted",
    { source: petriniYarnSystems, at: "whole page", status: "read", prints: "5600", exact: "5600" },
    yarnCount,
    [{ count: worstedCount(20), plies: 2, counted: "single" }],
    yardsPerPound,
  );
  cited(
    "50/3 cotton",
    { source: rudeOddCounts, at: "whole page", status: "read", prints: "14000", exact: "14000" },
    yarnCount,
    [{ count: cottonCount(50), plies: 3, counted: "single" }],
    yardsPerPound,
  );
  cited(
    "4/2 cotton",
    { source: textileindonesiaCount, at: "whole page", status: "read", prints: "1680", exact: "1680" },
    yarnCount,
    [{ count: cottonCount(4), plies: 2, counted: "single" }],
    yardsPerPound,
  );
  cited(
    "8/4 cotton",
    { source: textileindonesiaCount, at: "whole page", status: "read", prints: "same as 4/2", exact: "1680" },
    yarnCount,
    [{ count: cottonCount(8), plies: 4, counted: "single" }],
    yardsPerPound,
  );
  cited(
    "2/6 worsted",
    { source: textileindonesiaCount, at: "whole page", status: "read", prints: "1680", exact: "1680" },
    yarnCount,
    [{ count: worstedCount(6), plies: 2, counted: "single" }],
    yardsPerPound,
  );
  cited(
    "3/2 cotton, from class notes",
    { source: alessandrinaCounts, at: "whole page", status: "read", prints: "1260", exact: "1260" },
    yarnCount,
    [{ count: cottonCount(3), plies: 2, counted: "single" }],
    yardsPerPound,
  );
  cited(
    "5/2 cotton",
    {
      source: rugtalkYarnSize,
      at: "British order statement",
      status: "read",
      prints: "2400",
      exact: "2100",
      differs: "misprint: 4200 yd for the single, halved, is 2100",
    },
    yarnCount,
    [{ count: cottonCount(5), plies: 2, counted: "single" }],
    yardsPerPound,
  );
  cited(
    "40/2 spun silk is 40 hanks to the pound as written",
    { source: taylor1909, at: "site page 239", status: "read", prints: "40", exact: "40" },
    yarnCount,
    [{ count: cottonCount(40), plies: 2, counted: "finished thread" }],
    cottonCount,
  );
  cited(
    "40/2 spun silk is 60s worsted",
    { source: davis1920, at: "Ex. 9, p. 41", status: "read", prints: "60", exact: "60" },
    yarnCount,
    [{ count: cottonCount(40), plies: 2, counted: "finished thread" }],
    worstedCount,
  );
  cited(
    "2/40s merino is 30s worsted",
    { source: davis1920, at: "Ex. 7, p. 41", status: "read", prints: "30", exact: "30" },
    yarnCount,
    [{ count: cottonCount(40), plies: 2, counted: "single" }],
    worstedCount,
  );
  cited(
    "2/80s wraps as 40s",
    { source: brooks1892, at: "site page 91", status: "read", prints: "40", exact: "40" },
    yarnCount,
    [{ count: cottonCount(80), plies: 2, counted: "single" }],
    cottonCount,
  );
  cited(
    "30s/2 silk wraps as 30s",
    { source: brooks1892, at: "Counts of Silk", status: "read", prints: "30", exact: "30" },
    yarnCount,
    [{ count: cottonCount(30), plies: 2, counted: "finished thread" }],
    cottonCount,
  );
  cited(
    "2/30s cotton wraps as 15s",
    { source: brooks1892, at: "Counts of Silk", status: "read", prints: "15", exact: "15" },
    yarnCount,
    [{ count: cottonCount(30), plies: 2, counted: "single" }],
    cottonCount,
  );

  cited(
    "2/40s cotton, folded",
    { source: taylor1909, at: "site page 239", status: "read", prints: "20", exact: "20" },
    resultantCount,
    [{ count: cottonCount(40), plies: 2 }],
    cottonCount,
  );
  cited(
    "2/60s, folded",
    { source: davis1920, at: "Ex. 38, p. 52", status: "read", prints: "30", exact: "30" },
    resultantCount,
    [{ count: cottonCount(60), plies: 2 }],
    cottonCount,
  );
  cited(
    "20/2 silk on a weaver’s table",
    published(
      petriniYarnSystems,
      "whole page",
      "5000",
      "45359237/9144",
      "metric 20/2, rounded; as spun silk it would be 16,800",
    ),
    yarnCount,
    [{ count: metricCount(20), plies: 2, counted: "single" }],
    yardsPerPound,
  );
  cited(
    "2/10s cut wool of a dictionary that numbers the finished thread",
    published(sizesYarnNumbers, "cut and run", "3000", "3000"),
    yarnCount,
    [{ count: woollenCut(10), plies: 2, counted: "finished thread" }],
    yardsPerPound,
  );
  cited(
    "spun silk 50, single",
    published(dooley1914, "chapter on silk", "42000", "42000"),
    yarnCount,
    [{ count: spunSilkCount(50), plies: 1, counted: "finished thread" }],
    yardsPerPound,
  );
  cited(
    "spun silk 50-2",
    published(dooley1914, "chapter on silk", "42000", "42000"),
    yarnCount,
    [{ count: spunSilkCount(50), plies: 2, counted: "finished thread" }],
    yardsPerPound,
  );
  cited(
    "spun silk 50-3",
    published(dooley1914, "chapter on silk", "42000", "42000"),
    yarnCount,
    [{ count: spunSilkCount(50), plies: 3, counted: "finished thread" }],
    yardsPerPound,
  );

  it("numbered in tex grows heavier with every ply, numbered in cotton finer with every count", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 200 }), fc.integer({ min: 1, max: 12 }), (n, plies) => {
        expect(yarnCount({ count: tex(n), plies, counted: "single" }).value).toBe(String(n * plies));
        expect(yarnCount({ count: cottonCount(n * plies), plies, counted: "single" }).value).toBe(String(n));
      }),
    );
  });

  it("of one ply is its count", () => {
    expect(yarnCount({ count: cottonCount(8), plies: 1, counted: "single" }).value).toBe("8");
  });

  it("refuses all that is wrong with a yarn at once", () => {
    const wrong = { count: inches(8), plies: 1.5, counted: "folded", colour: "red" };
    try {
      yarnCount(wrong as never);
      expect.unreachable();
    } catch (error) {
      expect((error as QuantityError).faults.map(({ code }) => code)).toEqual([
        "wrong-kind",
        "not-whole",
        "unknown-word",
        "unknown-field",
      ]);
    }
  });

  it("is refused without a count, plies and what is counted, with what each is", () => {
    expect(faultsOf(yarnCount, { plies: 0 })).toEqual([
      "yarnCount({ count }): a yarn count",
      "yarnCount({ plies }): a whole number of plies, 1 or more",
      'yarnCount({ counted }): "single" or "finished thread"',
    ]);
  });
});
