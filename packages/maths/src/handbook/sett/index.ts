export { diametersPerInch } from "./diameters-per-inch.js";
export type { DiametersPerInchInput } from "./diameters-per-inch.js";
export { settByDiameter } from "./sett-by-diameter.js";
export type { SettByDiameterInput } from "./sett-by-diameter.js";
export { settByWraps } from "./sett-by-wraps.js";
export type { SettByWrapsInput } from "./sett-by-wraps.js";
