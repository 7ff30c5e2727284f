import { test } from "vitest";
import {
  cottonCount,
  endsPerInch,
  inches,
  millimetres,
  percentAdded,
  percentLost,
  percentOf,
  picksPerInch,
  pounds,
  tex,
} from "../../units/index.js";
import { countForWeight } from "../sett/count-for-weight.js";
import { picksForCount } from "../sett/picks-for-count.js";
import { settForPurpose } from "../sett/sett-for-purpose.js";
import { averageFloat } from "../weave/average-float.js";
import { weaveQuantities } from "../weave/weave-quantities.js";
import { threadFromCrimp } from "./thread-from-crimp.js";
import { totalCover } from "./total-cover.js";
import { warpMassPerArea } from "./warp-mass-per-area.js";

test("a percentage of another base does not compile", () => {
  // @ts-expect-error [ts2322] a take-up of the thread is no crimp of the cloth
  threadFromCrimp({ spacing: millimetres(1), crimp: percentLost(5), diameters: millimetres(1) });
  // @ts-expect-error [ts2322] a loss is no share of the closest sett
  settForPurpose({ closest: endsPerInch(20), share: percentLost(80) });
  // @ts-expect-error [ts2322] a crimp is no cover
  totalCover({ warpCover: percentAdded(50), weftCover: percentOf(50) });
});

test("ends for picks, direct for indirect counts and lengths for masses do not compile", () => {
  // @ts-expect-error [ts2322] ends are no picks
  picksForCount({ picks: endsPerInch(60), count: cottonCount(16), newCount: cottonCount(25) });
  // @ts-expect-error [ts2322] a direct count grows the other way
  warpMassPerArea({ sett: endsPerInch(60), count: tex(30), crimp: percentAdded(5) });
  // @ts-expect-error [ts2322] a length is no mass
  countForWeight({ count: cottonCount(20), mass: inches(6), newMass: pounds(7) });
  picksForCount({ picks: picksPerInch(60), count: cottonCount(16), newCount: cottonCount(25) });
});

test("a weave that is no drawing and a field left out do not compile", () => {
  // @ts-expect-error [ts2345] a name is no drawing
  weaveQuantities("plain");
  // @ts-expect-error [ts2345] every field is required
  averageFloat({ threads: 4 });
});
