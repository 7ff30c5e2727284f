export { rearrangement } from "./rearrangement.js";
export { solveFor } from "./solve-for.js";
export type { Turned, TurnedInput } from "./solve-for.js";
