import { describe } from "vitest";
import type { Citation } from "#ci/cited.js";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import {
  allFiberArts,
  brooks1892,
  horsensVaevekreds,
  sansyuSizai,
  starweaving2012,
  textileSchoolWeaving,
} from "#ci/sources.js";
import { centimetres, inches, percentAdded } from "../../units/index.js";
import { widthInReedByAdding } from "./width-in-reed-by-adding.js";

describe("crimp on the cloth and take-up on the thread", () => {
  cited(
    "width in the reed for 38 inches and 6 % of crimp",
    published(textileSchoolWeaving, "items 1 to 7", "width of cloth × (100 + weft crimp) ÷ 100", "40.28"),
    widthInReedByAdding,
    [{ finishedWidth: inches(38), allowance: percentAdded(6) }],
    inches,
  );
  cited(
    "width of thread in the reed for 50 centimetres and 8 %",
    published(sansyuSizai, "formula", "relaxed width × (1 + rate)", "54"),
    widthInReedByAdding,
    [{ finishedWidth: centimetres(50), allowance: percentAdded(8) }],
    centimetres,
  );
});

describe("width in the reed by adding", () => {
  const rows: readonly (readonly [title: string, Citation, width: number, percent: number])[] = [
    ["17 inches and 15 %", published(allFiberArts, "whole page", "19.5", "19.55"), 17, 15],
    ["8 inches and 10 %", published(starweaving2012, "steps 1-2", "8.8", "8.8"), 8, 10],
    ["36 inches and 6 %", published(brooks1892, "ch. IX, weight of a piece", "38", "38.16"), 36, 6],
  ];
  for (const [title, citation, width, percent] of rows) {
    const input = { finishedWidth: inches(width), allowance: percentAdded(percent) };
    cited(title, citation, widthInReedByAdding, [input], inches);
  }
  cited(
    "50 centimetres and 10 %",
    published(horsensVaevekreds, "whole page", "55", "55"),
    widthInReedByAdding,
    [{ finishedWidth: centimetres(50), allowance: percentAdded(10) }],
    centimetres,
  );
});

describe("the limits of width in reed by adding", () => {
  limits(
    widthInReedByAdding,
    [
      "is the finished width where nothing is added",
      { finishedWidth: inches(20), allowance: percentAdded(0) },
      20,
      inches,
    ],
    { finishedWidth: inches(0), allowance: percentAdded(-1) },
  );
});
