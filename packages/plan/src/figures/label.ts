import type { Part } from "../core/source.js";
import { all, own } from "../core/wiring.js";
import { worked } from "../core/worked.js";
import { fibreRows } from "../parts/fibres.js";
import type { FibreRow } from "../parts/fibres.js";
import { job } from "./keys.js";
import { yarns } from "./rows.js";

/** The fibres of the yarns. */
export const fibres: Part<readonly FibreRow[]> = worked("plan").part(
  { yarns: job.yarns, names: all(own(yarns, "yarn", "name")) },
  fibreRows,
);
