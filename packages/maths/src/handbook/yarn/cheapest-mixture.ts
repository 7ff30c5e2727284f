/** A size of package in whole numbers. */
export interface WholeSize {
  readonly mass: bigint;
  readonly price: bigint;
}

interface Mixture {
  /** Of each size, in the order of the list. */
  readonly numbers: readonly bigint[];
  readonly cost: bigint;
  readonly packages: bigint;
  readonly mass: bigint;
}

/** Mixtures looked at before the search gives up. */
export const MOST_TRIES = 20_000;

function commonMeasure(a: bigint, b: bigint): bigint {
  let [x, y] = [a, b];
  while (y > 0n) [x, y] = [y, x % y];
  return x;
}

/** What gives most for its price comes first; of two alike the larger. */
function byWorth(one: WholeSize, other: WholeSize): number {
  const [here, there] = [one.price * other.mass, other.price * one.mass];
  if (here !== there) return here < there ? -1 : 1;
  return one.mass > other.mass ? -1 : 1;
}

/** It costs less; costs as much and is fewer packages; or is as many, and more yarn. */
function isBetter(one: Mixture, than: Mixture): boolean {
  if (one.cost !== than.cost) return one.cost < than.cost;
  if (one.packages !== than.packages) return one.packages < than.packages;
  return one.mass > than.mass;
}

function withMore(so: Mixture, at: number, { mass, price }: WholeSize, number: bigint): Mixture {
  return {
    numbers: so.numbers.map((one, place) => (place === at ? number : one)),
    cost: so.cost + price * number,
    packages: so.packages + number,
    mass: so.mass + mass * number,
  };
}

/**
 * How many of each size cover so much at the least cost; null where too many mixtures would have to be looked at. The size
 * that gives most for its price fills what the others leave.
 */
export function cheapestMixture(needed: bigint, sizes: readonly WholeSize[]): readonly bigint[] | null {
  const [bulk, ...others] = sizes.map((size, at) => ({ ...size, at })).sort(byWorth);
  if (bulk === undefined) return [];
  let tries = 0;
  const found: { best: Mixture | null } = { best: null };
  const left = (so: Mixture): bigint => (needed > so.mass ? needed - so.mass : 0n);
  const isDearer = (so: Mixture): boolean =>
    found.best !== null && so.cost * bulk.mass + left(so) * bulk.price > found.best.cost * bulk.mass;

  const tryFrom = (index: number, so: Mixture): boolean => {
    tries += 1;
    if (tries > MOST_TRIES) return false;
    const size = others[index];
    if (size === undefined) {
      const whole = withMore(so, bulk.at, bulk, (left(so) + bulk.mass - 1n) / bulk.mass);
      if (found.best === null || isBetter(whole, found.best)) found.best = whole;
      return true;
    }
    // So many of it as weigh whole packages of the bulk cost no less than those.
    const most = bulk.mass / commonMeasure(size.mass, bulk.mass) - 1n;
    for (let number = 0n; number <= most; number += 1n) {
      const more = withMore(so, size.at, size, number);
      if (isDearer(more)) break;
      if (!tryFrom(index + 1, more)) return false;
      if (more.mass >= needed) break;
    }
    return true;
  };

  const none: Mixture = { numbers: sizes.map(() => 0n), cost: 0n, packages: 0n, mass: 0n };
  return tryFrom(0, none) ? (found.best ?? none).numbers : null;
}
