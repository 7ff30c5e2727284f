import { plainNumber, readInputs } from "../../engine/formula/index.js";
import { Decimal } from "../../engine/numbers.js";

export interface FloatFactorInput {
  /** Of the weave; 1 in plain weave. */
  readonly averageFloat: number;
  /** For the kind of weave: 0.39 in twills. */
  readonly exponent: number;
}

/**
 * The part that the weave plays in the rule of Brierley: its average float raised to the exponent of its kind.
 *
 * Only the exponent of twills was read; in plain weave the factor is 1 whatever the exponent.
 *
 * @throws QuantityError as any calculation does
 * @source gate-tf
 * @example floatFactor({ averageFloat: 2, exponent: 0.39 }) // 1.3103…
 */
export function floatFactor(input: FloatFactorInput): number {
  const inputs = {
    averageFloat: plainNumber("threads to a float", "on average, in the weave"),
    exponent: plainNumber("exponent of the rule", "for the kind of weave"),
  };
  readInputs("floatFactor", inputs, input);
  return new Decimal(input.averageFloat).pow(input.exponent).toNumber();
}
