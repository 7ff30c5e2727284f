import { readInputs, whole } from "../../engine/formula/index.js";
import type { Weave } from "./drawn.js";

export interface BasketInput {
  /** Ends and picks that go together as one in plain weave. */
  readonly together: number;
}

/**
 * A basket, which is mat or hopsack: plain weave with so many ends and picks together.
 *
 * @throws QuantityError "out-of-range" for fewer than two together
 * @example basket({ together: 2 }) // ["xx..", "xx..", "..xx", "..xx"]
 */
export function basket(input: BasketInput): Weave {
  readInputs("basket", { together: whole("threads", "that go as one", { atLeast: 2, atMost: 500 }) }, input);
  const { together } = input;
  const [over, under] = ["x".repeat(together), ".".repeat(together)];
  const rows = (row: string): readonly string[] => Array.from({ length: together }, () => row);
  return Object.freeze([...rows(over + under), ...rows(under + over)]);
}
