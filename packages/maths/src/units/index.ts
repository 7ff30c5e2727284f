export { dentsPerInch, dentsPerTenCentimetres, endsPerCentimetre, endsPerInch } from "./closeness.js";
export { picksPerCentimetre, picksPerInch } from "./closeness.js";
export { decitex, denier, tex } from "./direct-counts.js";
export {
  cottonCount,
  linenCount,
  metresPerKilogram,
  metricCount,
  worstedCount,
  yardsPerPound,
} from "./indirect-counts.js";
export { DentsPerLength, DirectCount, EndsPerLength, IndirectCount, Length, Mass, PicksPerLength } from "./kinds.js";
export type { Addition, Loss } from "./kinds.js";
export { centimetres, feet, inches, kilometres, metres, millimetres, yards } from "./length.js";
export { drams, grains, grams, kilograms, milligrams, ounces, pounds } from "./mass.js";
export { percentAdded, percentLost } from "./percent.js";
export type { ReadingOptions } from "./reading/amount.js";
export { lengthFrom, lengthReading } from "./reading/length-from.js";
export { massFrom, massReading } from "./reading/mass-from.js";
export { quantityFrom } from "./reading/quantity-from.js";
