import { kind } from "../engine/quantity/index.js";
import type { Kind, Quantity } from "../engine/quantity/index.js";

/** A length. */
export interface Length extends Quantity<"length"> {}
export const Length: Kind<Length> = /* @__PURE__ */ kind("length", "a length", "inches(21)");

/** A mass, which the trade calls a weight. */
export interface Mass extends Quantity<"mass"> {}
export const Mass: Kind<Mass> = /* @__PURE__ */ kind("mass", "a mass", "ounces(8)");

/** A yarn number that grows as the yarn gets thicker: tex, denier. */
export interface DirectCount extends Quantity<"mass per length"> {}
export const DirectCount: Kind<DirectCount> = /* @__PURE__ */ kind("mass per length", "a direct count", "tex(30)");

/** A yarn number that grows as the yarn gets finer: cotton, worsted, linen, metric count, yards per pound. */
export interface IndirectCount extends Quantity<"length per mass"> {}
export const IndirectCount: Kind<IndirectCount> = /* @__PURE__ */ kind(
  "length per mass",
  "an indirect count",
  "cottonCount(20)",
);

/** How heavy a cloth is for its size. */
export interface MassPerArea extends Quantity<"mass per area"> {}
export const MassPerArea: Kind<MassPerArea> = /* @__PURE__ */ kind(
  "mass per area",
  "a mass per area",
  "gramsPerSquareMetre(200)",
);

/** How heavy a fibre or yarn is for its size. */
export interface Density extends Quantity<"mass per volume"> {}
export const Density: Kind<Density> = /* @__PURE__ */ kind(
  "mass per volume",
  "a density",
  'gramsPerCubicCentimetre("1.5")',
);

/** The room a thing takes up for its mass. */
export interface VolumePerMass extends Quantity<"volume per mass"> {}
export const VolumePerMass: Kind<VolumePerMass> = /* @__PURE__ */ kind(
  "volume per mass",
  "a volume per mass",
  "cubicCentimetresPerGram(4)",
);

/** Closeness of the warp: ends in a length across the cloth. */
export interface EndsPerLength extends Quantity<"ends per length"> {}
export const EndsPerLength: Kind<EndsPerLength> = /* @__PURE__ */ kind("ends per length", "a sett", "endsPerInch(16)");

/** Threads of a yarn that would lie side by side, touching, in a length: diameters of the yarn. */
export interface DiametersPerLength extends Quantity<"diameters per length"> {}
export const DiametersPerLength: Kind<DiametersPerLength> = /* @__PURE__ */ kind(
  "diameters per length",
  "diameters in a length",
  "diametersPerInch(52)",
);

/** Fineness of a reed: dents in a length across it. */
export interface DentsPerLength extends Quantity<"dents per length"> {}
export const DentsPerLength: Kind<DentsPerLength> = /* @__PURE__ */ kind(
  "dents per length",
  "a reed number",
  "dentsPerInch(8)",
);

/** Closeness of the heddles on one shaft, which the trade counts like a reed. */
export interface HeddlesPerLength extends Quantity<"heddles per length"> {}
export const HeddlesPerLength: Kind<HeddlesPerLength> = /* @__PURE__ */ kind(
  "heddles per length",
  "a heald number",
  "heddlesPerInch(8)",
);

/** Closeness of the weft: picks in a length along the cloth. */
export interface PicksPerLength extends Quantity<"picks per length"> {}
export const PicksPerLength: Kind<PicksPerLength> = /* @__PURE__ */ kind(
  "picks per length",
  "a number of picks",
  "picksPerInch(14)",
);

/** Money, in one currency. */
export interface Money extends Quantity<"money"> {}
export const Money: Kind<Money> = /* @__PURE__ */ kind("money", "money", 'currency("EUR")(12.5)');

/** A percentage of what was there before: shrinkage, take-up, narrowing, waste. */
export interface Loss extends Quantity<"loss"> {}

/** A percentage of what it is added to: crimp, regain, size. */
export interface Addition extends Quantity<"addition"> {}

/** A percentage of a whole: fibre, colour. */
export interface Share extends Quantity<"share"> {}
