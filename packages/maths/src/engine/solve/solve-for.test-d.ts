import { expectTypeOf, test } from "vitest";
import { napkins } from "#ci/napkins.js";
import { threadForCloth, warpLength } from "../../handbook/index.js";
import { percentAdded, percentLost, yards } from "../../units/index.js";
import type { Length } from "../../units/index.js";
import { solveFor } from "./index.js";

const piecesFromWarp = solveFor(warpLength, "pieces", "warp", { rounding: "roundDown" });
const { pieces, ...others } = napkins;

test("the answer goes in under its name, and the input asked for comes out", () => {
  expectTypeOf(piecesFromWarp({ ...others, warp: yards(7) })).toEqualTypeOf<number>();
  expectTypeOf<Parameters<typeof piecesFromWarp>[0]["warp"]>().toEqualTypeOf<Length>();
  // @ts-expect-error [ts2345] the answer has to be given
  piecesFromWarp(others);
  // @ts-expect-error [ts2353] what is asked for is not given
  piecesFromWarp({ ...others, warp: yards(7), pieces });
});

test("what is no input, and a unit of another kind, do not compile", () => {
  // @ts-expect-error [ts2345] a warp has no colour
  solveFor(warpLength, "colour", "warp");
  // @ts-expect-error [ts2322] a crimp is no loss
  solveFor(threadForCloth, "crimp", "thread", { in: percentLost });
  solveFor(threadForCloth, "crimp", "thread", { in: percentAdded });
});
