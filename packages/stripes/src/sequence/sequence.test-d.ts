import { expectTypeOf, test } from "vitest";
import { colourOfEnd } from "./colour-of-end.js";
import { join } from "./join.js";
import { noEnds } from "./no-ends.js";
import { recolour } from "./recolour.js";
import { repeat } from "./repeat.js";
import { sequence, type Sequence } from "./sequence.js";

const warp = sequence([{ colour: "ash", ends: 4 }]);

test("the colours of a sequence keep their type", () => {
  expectTypeOf(warp).toEqualTypeOf<Sequence<string>>();
  expectTypeOf(colourOfEnd({ sequence: warp, end: 1 })).toEqualTypeOf<string>();
  expectTypeOf(recolour({ sequence: warp, colours: new Map([["ash", 1]]) })).toEqualTypeOf<Sequence<number>>();
  expectTypeOf(join([warp, noEnds])).toEqualTypeOf<Sequence<string>>();
});
test("a wrong or missing field does not compile", () => {
  // @ts-expect-error [ts2345]: times is missing
  repeat({ sequence: warp });
  // @ts-expect-error [ts2322]: ends is a number
  sequence([{ colour: "ash", ends: "4" }]);
  // @ts-expect-error [ts2540]: a sequence does not change
  warp.ends = 5;
});
