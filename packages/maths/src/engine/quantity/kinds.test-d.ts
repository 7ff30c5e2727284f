import { expectTypeOf, test } from "vitest";
import { napkins } from "#ci/napkins.js";
import { foldedCount, warpLength, yarnMass } from "../../handbook/index.js";
import { cottonCount, grams, inches, percentAdded, tex, yards } from "../../units/index.js";
import type { Length } from "../../units/index.js";
import { compare, sum } from "./index.js";

test("a calculation gives the kind it declares", () => {
  expectTypeOf(warpLength(napkins)).toEqualTypeOf<Length>();
  expectTypeOf(warpLength(napkins).in(yards)).toEqualTypeOf<number>();
});

test("another kind, base or unit does not compile", () => {
  // @ts-expect-error [ts2322] a mass is not a length
  warpLength({ ...napkins, loomWaste: grams(3) });
  // @ts-expect-error [ts2322] a percentage added is not a percentage lost
  warpLength({ ...napkins, takeUp: percentAdded(8) });
  // @ts-expect-error [ts2322] a bare number is not a length
  warpLength({ ...napkins, hemEachEnd: 1 });
  // @ts-expect-error [ts2345] a length is not read in grams
  inches(3).in(grams);
  // @ts-expect-error [ts2322] a direct count does not fold with indirect ones
  foldedCount({ counts: [cottonCount(20), tex(30)] });
  // @ts-expect-error [ts2322] a direct count is not divided by
  yarnMass({ length: yards(3), count: tex(30) });
  // @ts-expect-error [ts2345] a field is missing
  warpLength({ pieces: 8 });
  // @ts-expect-error [ts2353] a field is not known
  warpLength({ ...napkins, colour: "red" });
  // @ts-expect-error [ts2345] a length and a mass have no sum
  sum(inches(3), grams(3));
  // @ts-expect-error [ts2345] a length and a mass have no order
  compare(inches(3), grams(3));
  // @ts-expect-error [ts2345] a unit takes a number or decimal text, not a quantity
  yards(inches(36));
  // @ts-expect-error [ts2540] a quantity does not change
  inches(3).value = "4";
});
