import { dryMass, fibreInYarns, fibreShareByConditionedMass, fibreShareByDryMass } from "@thrum/maths";
import type { Addition, Mass, Share } from "@thrum/maths";
import { keyOfRow } from "../core/keys.js";
import type { Figure, Part, Source } from "../core/source.js";
import { all, field, own } from "../core/wiring.js";
import { worked } from "../core/worked.js";
import { othersThan, yarnsWithFibre } from "../parts/fibres.js";
import type { YarnsWithFibre } from "../parts/fibres.js";
import { job } from "./keys.js";
import { fibres } from "./label.js";
import { yarns } from "./rows.js";
import * as yarn from "./yarn.js";

const { figure, part } = worked("fibre");
const fibre = own(fibres, "fibre", "name");
const names = all(own(fibres, "fibre", "name"));

/** As agreed where the pieces are sold. */
const regain: Source<Addition, "fibre"> = keyOfRow("fibre", "label", "regain", "*");
/** The yarns that hold it. */
export const holding: Part<YarnsWithFibre, "fibre"> = part(
  { yarns: job.yarns, names: all(own(yarns, "yarn", "name")), masses: all(yarn.massInPieces), fibre },
  yarnsWithFibre,
);
/** In the pieces; the waste does not count. */
export const mass: Figure<Mass, "fibre"> = figure("in the pieces", fibreInYarns, {
  yarns: field(holding, "masses"),
  shares: field(holding, "shares"),
});
export const dry: Figure<Mass, "fibre"> = figure("dry", dryMass, { mass, regain });
/** Of the other fibres. */
export const othersDry: Part<readonly Mass[], "fibre"> = part({ names, all: all(dry), fibre }, othersThan);
export const otherRegains: Part<readonly Addition[], "fibre"> = part({ names, all: all(regain), fibre }, othersThan);
export const byDryMass: Figure<Share, "fibre"> = figure("by dry mass", fibreShareByDryMass, {
  fibre: dry,
  others: othersDry,
});
export const byConditionedMass: Figure<Share, "fibre"> = figure("by conditioned mass", fibreShareByConditionedMass, {
  fibre: dry,
  regain,
  others: othersDry,
  otherRegains,
});
