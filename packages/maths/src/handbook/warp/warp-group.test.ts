import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { baeuerlicheLeinenweberei, bergdala, encyclopedie1765, settSystems2014, taylor1909 } from "#ci/sources.js";
import { endsInGroups } from "./ends-in-groups.js";
import { warpGroup } from "./warp-group.js";

describe("a customary group of ends", () => {
  const held = (source: typeof taylor1909, at: string, ends: string): ReturnType<typeof published> =>
    published(source, at, ends, ends);
  cited(
    "a beer of Bradford",
    held(taylor1909, "p. 244 of the copy", "40"),
    warpGroup,
    ["beer, Bradford"],
    "endsPerGroup",
  );
  cited(
    "a beer of Dewsbury",
    held(settSystems2014, "entry Sett Systems", "38"),
    warpGroup,
    ["beer, Dewsbury"],
    "endsPerGroup",
  );
  cited(
    "a porter of Leeds",
    held(settSystems2014, "entry Sett Systems", "38"),
    warpGroup,
    ["porter, Leeds"],
    "endsPerGroup",
  );
  cited(
    "a portée of Lyons",
    held(encyclopedie1765, "vol. 15, velvets", "80"),
    warpGroup,
    ["portée, Lyons"],
    "endsPerGroup",
  );
  cited(
    "a Gang of the Hunsrück",
    held(baeuerlicheLeinenweberei, "subtitle 15", "40"),
    warpGroup,
    ["Gang, Hunsrück"],
    "endsPerGroup",
  );
  cited(
    "a pasma of 720 m over a warp of 12 m",
    held(bergdala, "sections on yarn and reeds", "60"),
    warpGroup,
    ["pasma, Sweden 1896"],
    "endsPerGroup",
  );

  it("of one word makes another warp in another place: 50 beers are 2000 ends or 1900", () => {
    expect(endsInGroups({ groups: 50, endsPerGroup: warpGroup("beer, Bradford").endsPerGroup })).toBe(2000);
    expect(endsInGroups({ groups: 50, endsPerGroup: warpGroup("beer, Dewsbury").endsPerGroup })).toBe(1900);
  });

  const named = fc.constantFrom("beer, Blackburn", "porter, Dundee", "double portée, Lyons", "Gang, Hunsrück");

  it("counts as many ends for so many groups as a sum of one by one", () => {
    fc.assert(
      fc.property(named, fc.integer({ min: 1, max: 600 }), (name, groups) => {
        const { endsPerGroup } = warpGroup(name);
        const oneByOne = Array.from({ length: groups }, () => endsPerGroup).reduce((total, ends) => total + ends, 0);
        expect(endsInGroups({ groups, endsPerGroup })).toBe(oneByOne);
        expect(endsPerGroup % 2).toBe(0);
      }),
    );
  });

  it("is as many ends doubled for a double portée", () => {
    expect(warpGroup("double portée, Lyons").endsPerGroup).toBe(2 * warpGroup("portée, Lyons").endsPerGroup);
  });

  it("without the place is refused with the places that are known", () => {
    expect(() => warpGroup("beer" as never)).toThrow("beer, Bradford");
  });

  it("is refused by a name cut short, no name, and what every object has", () => {
    fc.assert(
      fc.property(named, fc.nat({ max: 12 }), (name, length) => {
        expect(codesOf(warpGroup, name.slice(0, length))).toEqual(["unknown-word name"]);
      }),
    );
    expect(codesOf(warpGroup, undefined)).toEqual(["missing name"]);
    expect(codesOf(warpGroup, "constructor")).toEqual(["unknown-word name"]);
  });
});
