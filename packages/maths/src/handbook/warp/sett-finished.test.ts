import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { roberts1912, sponsEncyclopaedia } from "#ci/sources.js";
import { endsPerInch, inches, percentAdded, percentLost, tweedSett } from "../../units/index.js";
import { lossFromMeasures } from "./loss-from-measures.js";
import { settAtLoom } from "./sett-at-loom.js";
import { settFinished } from "./sett-finished.js";

/** From 32 inches in the reed to 30 off the loom. */
const narrowed = percentLost("6.25");

describe("the sett in the reed and in the cloth", () => {
  cited(
    "84 ends to the inch, 32 inches in the reed and 30 off the loom",
    published(roberts1912, "pp. 204-205, plans of fig. 62", "", "89.6"),
    settFinished,
    [{ settAtLoom: endsPerInch(84), reedToFinished: narrowed }],
    endsPerInch,
  );
  cited(
    "84 ends to the inch in the reed, as a cord, which does not draw in",
    published(roberts1912, "pp. 204-205, plans of fig. 62", "84", "84"),
    settFinished,
    [{ settAtLoom: endsPerInch(84), reedToFinished: percentLost(0) }],
    endsPerInch,
  );
  cited(
    "hessian woven as 16 porter that finishes as 18",
    published(sponsEncyclopaedia, "Jute Manufactures, part 7", "18", "18"),
    settFinished,
    [{ settAtLoom: tweedSett(16), reedToFinished: lossFromMeasures({ before: inches(18), after: inches(16) }) }],
    tweedSett,
  );

  it("are each the other turned round, the cloth never the opener", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 900 }), fc.nat({ max: 95 }), (eighths, lost) => {
        const reedToFinished = percentLost(lost);
        const cloth = settFinished({ settAtLoom: endsPerInch(eighths / 8), reedToFinished });
        expect(cloth.in(endsPerInch)).toBeGreaterThanOrEqual(eighths / 8);
        expect(settAtLoom({ settFinished: cloth, reedToFinished }).in(endsPerInch)).toBe(eighths / 8);
      }),
    );
  });

  it("are refused where the width is all lost, and for a percentage added", () => {
    const sett = endsPerInch(20);
    expect(() => settFinished({ settAtLoom: sett, reedToFinished: percentLost(100) })).toThrow("less than 100 %");
    expect(() => settFinished({ settAtLoom: sett, reedToFinished: percentAdded(10) as never })).toThrow("percentLost");
  });
});
