import { there } from "./state.js";
import type { State } from "./state.js";

const MOST_SEARCHED = 1_000_000;

/** The largest whole number with which what is tried still says "enough": doubled, then halved. */
export function largest(tried: (value: number) => State): State {
  const first = tried(1);
  if (first.is !== "there") return first;
  const holds = (value: number): boolean => {
    const state = tried(value);
    return state.is === "there" && state.value === "enough";
  };
  if (first.value !== "enough") return there(0);
  let most = 1;
  while (holds(most * 2)) {
    most *= 2;
    if (most > MOST_SEARCHED) return { is: "none", why: "there is no end to it", way: null };
  }
  for (let step = most / 2; step >= 1; step /= 2) if (holds(most + step)) most += step;
  return there(most);
}
