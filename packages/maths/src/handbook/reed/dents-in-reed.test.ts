import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { brooks1892, ullgarnet2010 } from "#ci/sources.js";
import {
  centimetres,
  dentsPerInch,
  dentsPerTenCentimetres,
  inches,
  scotchReed,
  stockportReed,
} from "../../units/index.js";
import { dentsInReed } from "./dents-in-reed.js";
import { roomInReed } from "./room-in-reed.js";

describe("dents in a reed", () => {
  cited("24 1/4 inches of a 40 Stockport reed", published(brooks1892, "p. 92 of the copy", "485", "485"), dentsInReed, [
    { reed: stockportReed(40), reedLength: inches("24.25") },
  ]);
  cited("70 centimetres of a 30/10 reed", published(ullgarnet2010, "whole post", "210", "210"), dentsInReed, [
    { reed: dentsPerTenCentimetres(30), reedLength: centimetres(70) },
  ]);
  cited("37 inches of a 40 porter reed", published(brooks1892, "p. 147, ch. IX", "800", "800"), dentsInReed, [
    { reed: scotchReed(800), reedLength: inches(37) },
  ]);
  cited(
    "part of a dent is none: 12 inches of 1100 Scotch",
    { source: brooks1892, at: "p. 96 of the copy", status: "read", prints: "", exact: "356" },
    dentsInReed,
    [{ reed: scotchReed(1100), reedLength: inches(12) }],
  );
  it("are counted whole: 10 inches of a 12.5-dent reed hold 125, a hair less holds 124", () => {
    const reed = dentsPerInch("12.5");
    expect(dentsInReed({ reed, reedLength: inches(10) })).toBe(125);
    expect(dentsInReed({ reed, reedLength: inches("9.999") })).toBe(124);
  });
});

describe("room in a reed", () => {
  const reed = dentsPerInch(10);
  it("leaves every dent somewhere", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), (dents) => {
        const {
          verdict,
          dentsInReed: all,
          emptyAtLeft,
          emptyAtRight,
        } = roomInReed({ reed, reedLength: inches(40), dents });
        expect(verdict).toBe("fits");
        expect(emptyAtLeft + dents + emptyAtRight).toBe(all);
        expect(emptyAtRight - emptyAtLeft).toBeLessThanOrEqual(1);
      }),
    );
  });
});

describe("the limits of dents in reed", () => {
  limits(
    dentsInReed,
    ["of a reed shorter than a dent are none", { reed: dentsPerInch(10), reedLength: inches("0.09") }, 0],
    { reed: dentsPerInch(0), reedLength: inches(0) },
  );
});
