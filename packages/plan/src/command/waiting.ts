import { codeOf } from "./trouble.js";

const PAUSE = 5;
const never = new Int32Array(new SharedArrayBuffer(4));

/** Does the work again, after a moment, for as long as a pipe that does not wait says it is not ready. */
export function whenReady(work: () => number): number {
  for (;;) {
    try {
      return work();
    } catch (error) {
      if (codeOf(error) !== "EAGAIN") throw error;
      Atomics.wait(never, 0, 0, PAUSE);
    }
  }
}
