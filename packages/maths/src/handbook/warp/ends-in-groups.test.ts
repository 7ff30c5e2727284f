import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Citation } from "#ci/cited.js";
import { byHand, cited, published } from "#ci/cited.js";
import {
  bergdala,
  brooks1892,
  commonPractice,
  cupOnTheBus2018,
  encyclopedie1765,
  scottishNationalDictionary,
  sizesBeer,
} from "#ci/sources.js";
import { solveFor } from "../../engine/solve/index.js";
import { endsInGroups } from "./ends-in-groups.js";

describe("ends in groups", () => {
  const velvet = "vol. 15, velvets";
  const rows: readonly (readonly [title: string, Citation, groups: number, endsPerGroup: number])[] = [
    ["50 beers of 40", published(sizesBeer, "whole entry", "2000", "2000"), 50, 40],
    ["10 portées of 80 for the pile of a velvet", published(encyclopedie1765, velvet, "800", "800"), 10, 80],
    [
      "40 double portées of 160 for the ground of a velvet",
      published(encyclopedie1765, velvet, "6400", "6400"),
      40,
      160,
    ],
    ["11 bouts of a creel of 40", published(cupOnTheBus2018, "whole post", "440", "440"), 11, 40],
    [
      "30 porters of a reed, 20 splits in each",
      published(scottishNationalDictionary, "Porter, quotations of 1795 to 1867", "600", "600"),
      30,
      20,
    ],
    ["40 porters of a reed, 20 dents in each", published(brooks1892, "ch. IX, p. 147", "800", "800"), 40, 20],
    ["one pasma", published(bergdala, "sections on yarn and reeds", "60", "60"), 1, 60],
    ["12 1/2 beers of 40", byHand(commonPractice, "500"), 12.5, 40],
  ];
  for (const [title, citation, groups, endsPerGroup] of rows) {
    cited(title, citation, endsInGroups, [{ groups, endsPerGroup }]);
  }

  it("are turned round to the groups, halves among them", () => {
    const groups = solveFor(endsInGroups, "groups", "ends");
    expect(groups({ ends: 500, endsPerGroup: 40 })).toBe(12.5);
    const size = { max: 400, min: 1 };
    fc.assert(
      fc.property(fc.integer(size), fc.integer(size), (halves, per) => {
        const given = { groups: halves / 2, endsPerGroup: per * 2 };
        expect(groups({ ends: endsInGroups(given), endsPerGroup: per * 2 })).toBe(halves / 2);
      }),
    );
  });

  it("come out whole or not at all: half a group of 45 is no number of ends", () => {
    expect(endsInGroups({ groups: 0.5, endsPerGroup: 2 })).toBe(1);
    expect(() => endsInGroups({ groups: 12.5, endsPerGroup: 45 })).toThrow("a whole number of ends");
  });

  it("are refused for no group, and for a group of nothing", () => {
    expect(() => endsInGroups({ groups: 0, endsPerGroup: 40 })).toThrow("more than 0");
    expect(() => endsInGroups({ groups: 3, endsPerGroup: 0 })).toThrow("1 or more");
  });
});
