import { sign } from "@thrum/maths";
import type { Figure, Part } from "../core/source.js";
import { all, always, own } from "../core/wiring.js";
import { worked } from "../core/worked.js";
import { runsOutFirst } from "../parts/runs-out-first.js";
import type { RunsOut } from "../parts/runs-out-first.js";
import { job } from "./keys.js";
import { yarns } from "./rows.js";
import * as warp from "./warp.js";
import * as yarn from "./yarn.js";

const { part, firstOf, word } = worked("plan");

/** Whether there is warp enough: always, where its length is not fixed beforehand. */
export const lengthHolds: Part<"enough" | "short"> = firstOf(
  part({ fixed: job.warp.length, holds: warp.holds }, ({ holds }) => holds),
  always("enough" as const),
);
/** Whether no yarn is missing, and nothing of a warp fixed beforehand. */
export const isEnough: Figure<"enough" | "short"> = word(
  "enough for the pieces",
  { missing: all(yarn.missing), length: lengthHolds },
  ({ missing, length }) => (length === "enough" && missing.every((mass) => sign(mass) <= 0) ? "enough" : "short"),
);
/** The yarn that runs out first, and what each of them would allow. */
export const runsOut: Part<RunsOut> = part(
  { names: all(own(yarns, "yarn", "name")), allowed: all(yarn.allowed) },
  runsOutFirst,
);
