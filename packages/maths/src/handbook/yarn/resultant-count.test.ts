import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import type { Citation } from "#ci/cited.js";
import {
  bell1895,
  blanco1917,
  dooley1914,
  elkinsWebs,
  fiberartisan2014,
  projectParade2017,
  sweatyKnitter2015,
  textileNotes,
  threadNumbers1888,
} from "#ci/sources.js";
import type { Unit } from "../../engine/quantity/index.js";
import {
  cottonCount,
  linenCount,
  metresPerKilogram,
  metricCount,
  tex,
  worstedCount,
  yardsPerPound,
} from "../../units/index.js";
import type { IndirectCount } from "../../units/index.js";
import { resultantCount } from "./resultant-count.js";

type Row = readonly [title: string, Citation, count: IndirectCount, plies: number, Unit<"length per mass">];

const rows: readonly Row[] = [
  ["2/40 has 20 hanks to the pound", published(blanco1917, "p. 37", "20", "20"), cottonCount(40), 2, cottonCount],
  ["3/30 has 10 hanks to the pound", published(blanco1917, "p. 37", "10", "10"), cottonCount(30), 3, cottonCount],
  ["4/120 has 30 hanks to the pound", published(blanco1917, "p. 37", "30", "30"), cottonCount(120), 4, cottonCount],
  [
    "three cords of 60s are a 20s",
    published(dooley1914, "chapter on thread", "20", "20"),
    cottonCount(60),
    3,
    cottonCount,
  ],
  [
    "2-100 French spun silk has 50,000 metres to the kilogram",
    published(dooley1914, "chapter on silk", "50000", "50000"),
    metricCount(100),
    2,
    metresPerKilogram,
  ],
  [
    "3-100 French spun silk has 33,333 metres to the kilogram",
    published(dooley1914, "chapter on silk", "33333", "100000/3"),
    metricCount(100),
    3,
    metresPerKilogram,
  ],
  [
    "yards per pound of 2/10 merino and tencel, counted as worsted",
    published(elkinsWebs, "whole page", "2800", "2800"),
    worstedCount(10),
    2,
    yardsPerPound,
  ],
  [
    "yards per pound of 8/3 cotton",
    published(sweatyKnitter2015, "table", "2240", "2240"),
    cottonCount(8),
    3,
    yardsPerPound,
  ],
  [
    "yards per pound of 10/2 cotton",
    published(sweatyKnitter2015, "table", "4200", "4200"),
    cottonCount(10),
    2,
    yardsPerPound,
  ],
  [
    "yards per pound of 20/2 cotton",
    published(sweatyKnitter2015, "table", "8400", "8400"),
    cottonCount(20),
    2,
    yardsPerPound,
  ],
  [
    "yards per pound of 8/3 worsted",
    published(sweatyKnitter2015, "table", "1493.33", "4480/3"),
    worstedCount(8),
    3,
    yardsPerPound,
  ],
  [
    "yards per pound of 16/2 worsted",
    published(sweatyKnitter2015, "table", "4480", "4480"),
    worstedCount(16),
    2,
    yardsPerPound,
  ],
  [
    "yards per pound of 20/5 worsted",
    published(sweatyKnitter2015, "table", "2240", "2240"),
    worstedCount(20),
    5,
    yardsPerPound,
  ],
  [
    "yards per pound of 5/2 cotton",
    published(projectParade2017, "whole page", "2100", "2100"),
    cottonCount(5),
    2,
    yardsPerPound,
  ],
  [
    "yards per pound of 8/2 cotton",
    published(projectParade2017, "whole page", "3360", "3360"),
    cottonCount(8),
    2,
    yardsPerPound,
  ],
  [
    "yards per pound of 16/2 cotton",
    published(projectParade2017, "whole page", "6720", "6720"),
    cottonCount(16),
    2,
    yardsPerPound,
  ],
  [
    "five ply of 30s linen made three ply is 2 lea",
    published(bell1895, "ch. II, p. 75", "given as alternatives", "2"),
    linenCount(30),
    15,
    linenCount,
  ],
  [
    "three ply of 18s linen made three ply is 2 lea",
    published(bell1895, "ch. II, p. 75", "given as alternatives", "2"),
    linenCount(18),
    9,
    linenCount,
  ],
  [
    "No. 60 three-cord is the size of 20s",
    published(threadNumbers1888, "whole article", "20", "20"),
    cottonCount(60),
    3,
    cottonCount,
  ],
  [
    "No. 60 six-cord, of six strands of 120s, is the size of 20s",
    published(threadNumbers1888, "whole article", "same size as the three-cord", "20"),
    cottonCount(120),
    6,
    cottonCount,
  ],
  [
    "24s cotton, five-fold then three-fold",
    published(
      textileNotes,
      "Designation of yarns after the ASTM practice",
      "R 1.4",
      "8/5",
      "a resultant marked R is measured: twist has made it coarser than 1.6",
    ),
    cottonCount(24),
    15,
    cottonCount,
  ],
  [
    "8/2 cotton by the balance",
    published(fiberartisan2014, "7 February", "3400", "3360", "measured, within 1.2 % of what the count promises"),
    cottonCount(8),
    2,
    yardsPerPound,
  ],
];

describe("count of a yarn of equal plies", () => {
  for (const [title, citation, count, plies, unit] of rows) {
    cited(title, citation, resultantCount, [{ count, plies }], unit);
  }

  it("of a single is its own", () => {
    expect(resultantCount({ count: cottonCount(16), plies: 1 }).in(cottonCount)).toBe(16);
  });

  it("is the same whether the plies are folded at once or by twos", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 300 }), fc.integer({ min: 1, max: 12 }), (number, plies) => {
        const count = worstedCount(number);
        const pairs = resultantCount({ count: resultantCount({ count, plies: 2 }), plies });
        const once = resultantCount({ count, plies: 2 * plies }).in(worstedCount);
        expect(Math.abs(pairs.in(worstedCount) - once)).toBeLessThanOrEqual(1e-12 * once);
      }),
    );
  });

  it("refuses half a ply, and a direct count", () => {
    expect(() => resultantCount({ count: cottonCount(8), plies: 1.5 })).toThrow("plies");
    expect(() => resultantCount({ count: tex(30) as never, plies: 2 })).toThrow("count");
  });
});
