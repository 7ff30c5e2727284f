import { expect, it } from "vitest";
import { jobIn } from "#ci/example-jobs.js";
import { planWarp } from "../data/plan-warp.js";
import { yarnSigns } from "./yarn-signs.js";

const signs = (text: string): ReturnType<typeof yarnSigns> => {
  return yarnSigns(planWarp(jobIn(text)));
};

it("gives each yarn the letter and the hatch of the sheets, and its colour where it is known", () => {
  expect(signs('stripes: [4 plum, 4 pink]\nyarns: { plum: { seen: "#5b2a4a" }, pink: }')).toEqual([
    { name: "plum", letter: "P", hatch: "M2 1v2M6 5v2", seen: "#5b2a4a" },
    { name: "pink", letter: "I", hatch: "M0 4H8", seen: null },
  ]);
});

it("knows yarns that are only named in the stripes, and none where there are none", () => {
  expect(signs("stripes: [4 plum]").map(({ name }) => name)).toEqual(["plum"]);
  expect(signs("title: nothing yet")).toEqual([]);
});
