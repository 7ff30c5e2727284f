import { added, positive, readInputs } from "../../engine/formula/index.js";
import { compare, difference, sum } from "../../engine/quantity/index.js";
import { reading, refuse } from "../../engine/refusal.js";
import { Length } from "../../units/index.js";
import type { Addition } from "../../units/index.js";
import type { PeirceThread } from "./peirce-thread.js";
import { threadFromCrimp } from "./thread-from-crimp.js";
import { threadFromHeight } from "./thread-from-height.js";

export interface PeirceClothInput {
  /** Of the ends, from middle to middle. */
  readonly endSpacing: Length;
  /** Of the picks, from middle to middle. */
  readonly pickSpacing: Length;
  /** Taken as round. */
  readonly warpDiameter: Length;
  /** Taken as round. */
  readonly weftDiameter: Length;
  /** To the length of the cloth. */
  readonly warpCrimp: Addition;
}

export interface PeirceCloth {
  readonly warp: PeirceThread;
  readonly weft: PeirceThread;
  /** Through the cloth, where it is thickest. */
  readonly thickness: Length;
}

/** A refusal of one of its threads is told of the cloth that was asked for. */
function threadOf(field: keyof PeirceClothInput, bent: () => PeirceThread): PeirceThread {
  const thread = reading(bent);
  if (thread.ok) return thread.value;
  const [{ code, expected, received, remedy, params }] = thread.faults;
  refuse(code, ["peirceCloth", field], expected, received, remedy, params);
}

/**
 * A plain weave by Peirce's equations from the crimp of its warp: what the warp does not bend, the weft must.
 *
 * @throws QuantityError "no-answer" beyond the jam, for warp or weft
 * @source balasubramanian-cloth
 * @example
 * const input = { endSpacing: millimetres("0.4"), pickSpacing: millimetres("0.4"), warpDiameter: millimetres("0.2"), weftDiameter: millimetres("0.2"), warpCrimp: percentAdded(10) };
 * peirceCloth(input).thickness.in(millimetres) // 0.431…
 */
export function peirceCloth(input: PeirceClothInput): PeirceCloth {
  const inputs = {
    endSpacing: positive(Length, "of the ends"),
    pickSpacing: positive(Length, "of the picks"),
    warpDiameter: positive(Length, "taken as round"),
    weftDiameter: positive(Length, "taken as round"),
    warpCrimp: added("to the length of the cloth"),
  };
  readInputs("peirceCloth", inputs, input);
  const { endSpacing, pickSpacing, warpDiameter, weftDiameter, warpCrimp } = input;
  const diameters = sum(warpDiameter, weftDiameter);
  const warp = threadOf("warpCrimp", () => threadFromCrimp({ spacing: pickSpacing, crimp: warpCrimp, diameters }));
  const height = difference(diameters, warp.height);
  const weft = threadOf("endSpacing", () => threadFromHeight({ spacing: endSpacing, height, diameters }));
  const [throughWarp, throughWeft] = [sum(warp.height, warpDiameter), sum(weft.height, weftDiameter)];
  const thickness = compare(throughWarp, throughWeft) < 0 ? throughWeft : throughWarp;
  return Object.freeze({ warp, weft, thickness });
}
