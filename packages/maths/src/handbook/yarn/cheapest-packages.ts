import { atLeastZero, listOf, positive, readInputs } from "../../engine/formula/index.js";
import { inUnit } from "../../engine/quantity/index.js";
import { refuse } from "../../engine/refusal.js";
import { grams, Mass, Money } from "../../units/index.js";
import { cheapestMixture, MOST_TRIES } from "./cheapest-mixture.js";

export interface CheapestPackagesInput {
  /** Of this yarn. */
  readonly needed: Mass;
  /** Of yarn on one package of each size, the tube not counted. */
  readonly packageMass: readonly Mass[];
  /** Of one package of that size. */
  readonly price: readonly Money[];
}

/** What is needed may be a quotient of 34 digits: the last of them ask for no package more. */
const RESIDUE = 10n ** 20n;

/** Decimals as whole numbers of one measure. */
function inWhole(values: readonly string[]): readonly bigint[] {
  const split = values.map((value) => value.split("."));
  const places = Math.max(...split.map(([, part = ""]) => part.length));
  return split.map(([whole = "", part = ""]) => BigInt(whole + part.padEnd(places, "0")));
}

/**
 * How many packages of each size cover what is needed at the least cost. Of mixtures that cost the same it is the one of
 * fewest packages, and of those the one with most yarn.
 *
 * @param input what is needed, and the sizes with their prices, two lists of one length
 * @returns of each size how many, in the order given
 * @throws QuantityError for a field that is missing, unknown or of another kind; "out-of-range" where sizes fit one another so
 *   badly that more than 20,000 mixtures would have to be looked at
 * @source common practice, no source
 * @example
 * const price = [currency("EUR")("14.50"), currency("EUR")(26)];
 * cheapestPackages({ needed: ounces(20), packageMass: [ounces(8), ounces(16)], price }) // [1, 1]
 */
export function cheapestPackages(input: CheapestPackagesInput): readonly number[] {
  const declared = {
    needed: atLeastZero(Mass, "of this yarn"),
    packageMass: listOf(positive(Mass, "of yarn on one package of each size, the tube not counted")),
    price: listOf(positive(Money, "of one package of that size")),
  };
  readInputs("cheapestPackages", declared, input, "together");
  const [needed = 0n, ...masses] = inWhole(
    [input.needed, ...input.packageMass].map((mass) => inUnit(mass, grams).value),
  );
  const prices = inWhole(input.price.map(({ value }) => value));
  const sizes = masses.map((mass, at) => ({ mass, price: prices[at] ?? 0n }));
  const numbers = cheapestMixture(needed - needed / RESIDUE, sizes);
  if (numbers !== null) return Object.freeze(numbers.map(Number));
  refuse(
    "out-of-range",
    ["cheapestPackages", "packageMass"],
    `sizes of which at most ${String(MOST_TRIES)} mixtures are to be looked at`,
    "more of them",
    "Leave out a size, or take sizes that go into one another.",
  );
}
