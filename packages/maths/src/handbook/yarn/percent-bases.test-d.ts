import { test } from "vitest";
import { cottonCount, grams, percentAdded, percentLost, percentOf, tex, yards } from "../../units/index.js";
import { agreedRegain } from "./agreed-regain.js";
import { averageCountByLength } from "./average-count-by-length.js";
import { contractedCount } from "./contracted-count.js";
import { countFromShare } from "./count-from-share.js";
import { foldedCountDirect } from "./folded-count-direct.js";
import { singleForFoldedWithTakeUp } from "./single-for-folded-with-take-up.js";
import { waterInYarn } from "./water-in-yarn.js";

test("a percentage of another base does not compile", () => {
  // @ts-expect-error [ts2322] a contraction of the singles is no take-up of the folded length
  contractedCount({ count: cottonCount(8), plies: 2, contraction: percentAdded(5) });
  // @ts-expect-error [ts2322] a take-up of the folded length is no contraction of the singles
  singleForFoldedWithTakeUp({ folded: cottonCount(8), plies: 2, takeUp: percentLost(5) });
  // @ts-expect-error [ts2322] a content is no regain
  waterInYarn({ mass: grams(100), regain: percentLost(14) });
  // @ts-expect-error [ts2322] a loss is no share
  countFromShare({ folded: cottonCount(12), share: percentLost(20) });
  countFromShare({ folded: cottonCount(12), share: percentOf(20) });
});

test("counts of two kinds and masses for lengths do not compile", () => {
  // @ts-expect-error [ts2322] an indirect count does not add to direct ones
  foldedCountDirect({ counts: [tex(20), cottonCount(30)] });
  // @ts-expect-error [ts2322] a mass is no length
  averageCountByLength({ lengths: [grams(1)], counts: [cottonCount(30)] });
  averageCountByLength({ lengths: [yards(1)], counts: [cottonCount(30)] });
  // @ts-expect-error [ts2322] no convention divides nettle
  agreedRegain({ convention: "ASTM D1909", fibre: "nettle" });
});
