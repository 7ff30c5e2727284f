import { readInputs, whole } from "../../engine/formula/index.js";
import { refuse } from "../../engine/refusal.js";
import type { Weave } from "./drawn.js";

export interface SatinInput {
  /** In the repeat, as many as picks. */
  readonly ends: number;
  /** Ends from the binding of one pick to that of the next. */
  readonly move: number;
}

/**
 * A warp-faced satin: every end passes under one pick of the repeat, no two bindings side by side.
 *
 * @throws QuantityError "no-answer" for a move that binds side by side or leaves ends unbound
 * @example satin({ ends: 5, move: 2 }) // [".xxxx", "xx.xx", "xxxx.", "x.xxx", "xxx.x"]
 */
export function satin(input: SatinInput): Weave {
  const inputs = {
    ends: whole("ends", "in the repeat", { atLeast: 5, atMost: 1000 }),
    move: whole("ends", "from one binding to the next", { atLeast: 2, atMost: 998 }),
  };
  readInputs("satin", inputs, input);
  const { ends, move } = input;
  const bound = Array.from({ length: ends }, (_, pick) => (pick * move) % ends);
  if (move > ends - 2 || new Set(bound).size < ends) {
    refuse(
      "no-answer",
      ["satin", "move"],
      `a move from 2 to ${String(ends - 2)} that shares no factor with ${String(ends)} ends`,
      String(move),
      "A satin of six ends has no such move; those of five have 2 and 3, of eight 3 and 5.",
    );
  }
  return Object.freeze(bound.map((at) => `${"x".repeat(at)}.${"x".repeat(ends - at - 1)}`));
}
