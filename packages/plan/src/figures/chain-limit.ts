import type { Mass } from "@thrum/maths";
import type { Figure, Part } from "../core/source.js";
import { Waits } from "../core/waits.js";
import { worked } from "../core/worked.js";
import { job } from "./keys.js";

const { part, word } = worked("plan");

/** How the most of a chain is told. */
export const by: Figure<"ends" | "mass"> = word("most of a chain told", { most: job.winding.most }, ({ most }) =>
  "ends" in most ? "ends" : "mass",
);
/** That one chain may weigh. */
export const mass: Part<Mass> = part({ most: job.winding.most }, ({ most }) => {
  if ("mass" in most) return most.mass;
  throw new Waits([]);
});
