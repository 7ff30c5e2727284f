import { asText, oldWarpLeft } from "@thrum/maths";
import type { Length } from "@thrum/maths";
import type { JobJoin } from "../job/join.js";
import type { Told } from "./told.js";

export interface LeftOnLoom {
  readonly knots: NonNullable<JobJoin["knots"]>;
  readonly pastReed: Length;
  readonly behindHeddles: Length;
}

/** What will stand of the old warp after the cut, against what must stand there to be tied to. */
export function againstLeft({ knots, pastReed, behindHeddles }: LeftOnLoom): readonly Told[] {
  const { says, reaches, mustStand, short, instead } = oldWarpLeft({ knotsTied: knots, pastReed, behindHeddles });
  const standing = reaches === false ? "must" : "free";
  const both = ({ pastReed: front, behindHeddles: back }: typeof short): readonly string[] => [
    asText(front, { step: "0.1", rounding: "roundUp" }),
    asText(back, { step: "0.1", rounding: "roundUp" }),
  ];
  const stands = [pastReed, behindHeddles].map((length) => asText(length));
  const values = { mustStand: both(mustStand), stands, short: both(short), instead: [...instead] };
  return [{ standing, about: "old warp left", says, values }];
}
