export { rearrangement } from "./rearrangement.js";
