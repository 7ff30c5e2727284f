import fc from "fast-check";
import { test } from "vitest";

/** How many examples every law is tried on; THRUM_RUNS asks for more. */
const RUNS = Math.max(1000, fc.readConfigureGlobal().numRuns ?? 0);

/** A law of stripe sequences, by its number and its sentence, tried on examples made up by fast-check. */
export function law<T extends unknown[]>(
  number: number,
  sentence: string,
  examples: readonly [...{ [K in keyof T]: fc.Arbitrary<T[K]> }],
  holds: (...example: T) => void,
): void {
  test(`law ${number}: ${sentence}`, () => {
    fc.assert(
      fc.property(fc.tuple<T>(...examples), (example) => {
        holds(...example);
      }),
      { numRuns: RUNS },
    );
  });
}

export interface WrittenStripe {
  readonly colour: string;
  readonly ends: number;
}

/** Stripes as a weaver might write them, neighbours of one colour among them. */
export const stripes: fc.Arbitrary<WrittenStripe[]> = fc.array(
  fc.record({ colour: fc.constantFrom("ash", "coal", "madder", "weld"), ends: fc.integer({ min: 1, max: 12 }) }),
  { minLength: 1, maxLength: 12 },
);

export const upTo = (most: number): fc.Arbitrary<number> => fc.integer({ min: 0, max: most });
