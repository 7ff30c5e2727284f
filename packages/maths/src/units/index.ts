export * from "./closeness.js";
export * from "./direct-counts.js";
export * from "./hanks.js";
export * from "./indirect-counts.js";
export {
  Density,
  DentsPerLength,
  DiametersPerLength,
  DirectCount,
  EndsPerLength,
  HeddlesPerLength,
  IndirectCount,
  Length,
  Mass,
  MassPerArea,
  Money,
  PicksPerLength,
  VolumePerMass,
} from "./kinds.js";
export type { Addition, Loss, Share } from "./kinds.js";
export { centimetres, feet, inches, kilometres, metres, miles, millimetres, yards } from "./length.js";
export { drams, grains, grams, kilograms, milligrams, ounces, pounds } from "./mass.js";
export { gramsPerSquareMetre, ouncesPerSquareYard } from "./mass-per-area.js";
export { cubicCentimetresPerGram, gramsPerCubicCentimetre } from "./mass-per-volume.js";
export { currency } from "./money.js";
export { lengthPerMass } from "./length-per-mass.js";
export { percentAdded, percentLost, percentOf } from "./percent.js";
export * from "./long-yards.js";
export * from "./reeds.js";
export * from "./spyndles.js";
export type { CountSystem } from "./reading/count-names.js";
export { countSystemFrom, countSystemReading } from "./reading/count-system-from.js";
export type { ReadingOptions } from "./reading/amount.js";
export { healdFrom, picksFrom, reedFrom, settFrom } from "./reading/closeness-from.js";
export { countFrom } from "./reading/count-from.js";
export { moneyFrom } from "./reading/money-from.js";
export { decimalTextFrom, numberFrom } from "./reading/number-from.js";
export { percentFrom } from "./reading/percent-from.js";
export { lengthFrom, lengthReading } from "./reading/length-from.js";
export { massFrom, massReading } from "./reading/mass-from.js";
export { quantityFrom } from "./reading/quantity-from.js";
export { unitCalled } from "./reading/unit-words.js";
