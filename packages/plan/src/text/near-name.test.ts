import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { nearName, unlike } from "./near-name.js";

const yarns = ["natural", "indigo", "madder", "linen", "weld"];

describe("the name that was meant", () => {
  it.each([
    ["a letter left out", "indgo", "indigo"],
    ["a letter too many", "maddder", "madder"],
    ["capitals", "WELD", "weld"],
    ["two letters swapped in a name of five", "linne", "linen"],
    ["one letter of two", "we", undefined],
    ["half of four letters", "wled", undefined],
    ["a name like none", "cochineal", undefined],
    ["more letters than are looked at", "n".repeat(41), undefined],
  ])("of %s", (_what, given, meant) => {
    expect(nearName(given, yarns)).toBe(meant);
  });

  it("is the one with a letter changed, wherever the letter stands", () => {
    fc.assert(
      fc.property(fc.constantFrom("natural", "indigo", "madder", "linen"), fc.nat({ max: 4 }), (name, at) => {
        expect(nearName(`${name.slice(0, at)}?${name.slice(at + 1)}`, yarns)).toBe(name);
      }),
    );
  });

  it("is the nearest of two, and the first of two as near", () => {
    expect(nearName("flaxen", ["flaxes", "flaxen 2", "flaxe"])).toBe("flaxes");
    expect(nearName("flaxen", ["linen", "flaxen 2", "flaxer"])).toBe("flaxer");
  });

  it("is told, or else the names there are, thirty of them and how many more", () => {
    const names = Array.from({ length: 32 }, (_, at) => `shade ${String(at + 1)}`);
    expect(unlike("indgo", yarns)).toBe("Did you mean indigo?");
    expect(unlike("cochineal", ["weld"])).toBe("Write weld.");
    expect(unlike("cochineal", names)).toMatch(/^Write one of shade 1, shade 2, .*, shade 30, and 2 more\.$/u);
  });
});
