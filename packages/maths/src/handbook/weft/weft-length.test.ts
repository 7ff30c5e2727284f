import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import {
  brinton1919,
  creativeThreadsWeft,
  patrickFriendship,
  textileNotes,
  weftHanded2010,
  zaldograce2019,
} from "#ci/sources.js";
import { centimetres, inches, metres, picksPerCentimetre, picksPerInch, yards } from "../../units/index.js";
import { weftLength } from "./weft-length.js";

describe("length of weft", () => {
  cited(
    "a yard of cloth 30 inches wide at 60 picks",
    { source: textileNotes, at: "Weft calculations, sections 1-4", status: "read", prints: "1800", exact: "1800" },
    weftLength,
    [{ wovenLength: yards(1), picks: picksPerInch(60), widthInReed: inches(30) }],
    yards,
  );
  cited(
    "fifty yards of cloth 30 inches wide at 60 picks",
    { source: textileNotes, at: "Weft calculations, sections 1-4", status: "read", prints: "90000", exact: "90000" },
    weftLength,
    [{ wovenLength: yards(50), picks: picksPerInch(60), widthInReed: inches(30) }],
    yards,
  );
  cited(
    "two cloaks 45 inches wide at 10 picks",
    { source: weftHanded2010, at: "14 April 2010", status: "read", prints: "4500", exact: "4500" },
    weftLength,
    [{ wovenLength: yards(10), picks: picksPerInch(10), widthInReed: inches(45) }],
    yards,
  );
  cited(
    "napkins 24 inches wide at 14 picks, 79.5 inches woven",
    {
      source: zaldograce2019,
      at: "project page",
      status: "read",
      prints: "",
      exact: "742",
    },
    weftLength,
    [{ wovenLength: inches("79.5"), picks: picksPerInch(14), widthInReed: inches(24) }],
    yards,
  );

  cited(
    "220 centimetres at 8 picks, 55 centimetres in the reed",
    published(creativeThreadsWeft, "whole page", "968", "968"),
    weftLength,
    [{ wovenLength: centimetres(220), picks: picksPerCentimetre(8), widthInReed: centimetres(55) }],
    metres,
  );
  cited(
    "an inch of carpet 108 inches wide at four shots",
    published(brinton1919, "chenille chapter", "12", "12"),
    weftLength,
    [{ wovenLength: inches(1), picks: picksPerInch(4), widthInReed: inches(108) }],
    yards,
  );
  cited(
    "a towel of 43 inches at 24 picks, 20 5/8 inches in the reed",
    published(patrickFriendship, "project", "645", "2365/4", "allows 9 % more than the weft laid straight"),
    weftLength,
    [{ wovenLength: inches(43), picks: picksPerInch(24), widthInReed: inches("20.625") }],
    yards,
  );

  it("counted in centimetres is two metres of cloth, 8 picks, 50 cm: 1600 picks of half a metre", () => {
    const cloth = { wovenLength: centimetres(200), picks: picksPerCentimetre(8), widthInReed: centimetres(50) };
    expect(weftLength(cloth).in(metres)).toBe(800);
  });

  it("grows with the cloth, the picks and the width", () => {
    const size = fc.integer({ min: 1, max: 500 });
    fc.assert(
      fc.property(size, size, size, (length, picks, width) => {
        const cloth = { wovenLength: inches(length), picks: picksPerInch(picks), widthInReed: inches(width) };
        expect(weftLength(cloth).in(inches)).toBe(length * picks * width);
      }),
    );
  });

  it("is refused for a cloth of no width", () => {
    const cloth = { wovenLength: yards(10), picks: picksPerInch(10), widthInReed: inches(0) };
    expect(() => weftLength(cloth)).toThrow("{ widthInReed })");
  });
});
