import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { inUnit, ratio } from "../../engine/quantity/index.js";
import {
  clothQuantities,
  crimpAndTakeUp2015,
  crimpGlossary,
  jablonski,
  sansyuSizai,
  taylor1909,
  textileSchoolWeaving,
  weavingShrinkage,
} from "../../sources/index.js";
import { centimetres, cottonHanks, inches, percentAdded, percentLost, yards } from "../../units/index.js";
import { contractionByIntersections } from "../warp/contraction-by-intersections.js";
import { crimpFromMeasures } from "../warp/crimp-from-measures.js";
import { crimpFromTakeUp } from "../warp/crimp-from-take-up.js";
import { lossFromMeasures } from "../warp/loss-from-measures.js";
import { takeUpFromCrimp } from "../warp/take-up-from-crimp.js";
import { widthInReedByAdding } from "../warp/width-in-reed-by-adding.js";

describe("crimp on the cloth and take-up on the thread", () => {
  cited(
    "a crimp of 25 % by the formula for take-up",
    published(crimpAndTakeUp2015, "equations 1 to 5", "T = 100C ÷ (100 + C)", "20"),
    takeUpFromCrimp,
    [{ crimp: percentAdded(25) }],
    percentLost,
  );
  cited(
    "a take-up of 20 % by the formula for crimp",
    published(crimpAndTakeUp2015, "equations 1 to 5", "C = 100T ÷ (100 − T)", "25"),
    crimpFromTakeUp,
    [{ takeUp: percentLost(20) }],
    percentAdded,
  );
  cited(
    "weaving shrinkage of 10 cm of thread in 8 cm of cloth",
    published(weavingShrinkage, "formulas 1 and 2", "(L1 − L2) ÷ L1, L1 the straightened thread", "20"),
    lossFromMeasures,
    [{ before: centimetres(10), after: centimetres(8) }],
    percentLost,
  );
  cited(
    "crimp of 10 cm of thread in 8 cm of cloth",
    published(crimpGlossary, "sense 2", "on the length of the fabric", "25"),
    crimpFromMeasures,
    [{ threadLength: centimetres(10), clothLength: centimetres(8) }],
    percentAdded,
  );
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
  cited(
    "ten inches over the 8 1/2 they become",
    published(jablonski, "whole example", "1.176", "20/17"),
    ratio,
    [inches(10), inches("8.5")],
    null,
  );
  cited(
    "plain cloth of middling weight, 60 picks of 40s",
    published(taylor1909, "p. 429 of the copy", "4 1/2", "4.5"),
    contractionByIntersections,
    [{ intersectionsPerInch: 60, multiplier: 3, weftCount: 40 }],
    null,
  );
  cited(
    "3240 ends of 42 yards in hanks",
    published(clothQuantities, "example", "162", "162"),
    inUnit,
    [yards(136080), cottonHanks],
    cottonHanks,
  );

  it("are one difference on two bases", () => {
    const crimp = crimpFromMeasures({ threadLength: centimetres(10), clothLength: centimetres(8) });
    const takeUp = lossFromMeasures({ before: centimetres(10), after: centimetres(8) });
    expect(takeUpFromCrimp({ crimp }).in(percentLost)).toBe(takeUp.in(percentLost));
  });
});
