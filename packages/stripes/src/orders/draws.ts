import { type Check } from "../refusal/check.js";
import { whole } from "../refusal/kinds.js";
import { generator } from "./generator.js";

/** The generator takes 32 bits of a seed: a longer one would be cut in silence. */
export const aSeed: Check = /* @__PURE__ */ whole(0, 4_294_967_295);

/** The first draws of neighbouring seeds resemble one another. */
const WARM_UP = 32;

/** Draws of whole numbers from 0 up to a bound, itself left out; the same for one seed on every platform. */
export function draws(seed: number): (below: number) => number {
  const next = generator(seed);
  for (let draw = 0; draw < WARM_UP; draw++) next();
  return (below) => {
    // Numbers past the last whole multiple would make the low answers likelier.
    const fair = 4_294_967_296 - (4_294_967_296 % below);
    for (;;) {
      const drawn = next();
      if (drawn < fair) return drawn % below;
    }
  };
}
