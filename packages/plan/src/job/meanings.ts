import { clothMeans, warpMeans } from "./cloth.js";
import { foundMeans } from "./found.js";
import { costsMeans, jobMeans, labelMeans } from "./job.js";
import { joinMeans } from "./join.js";
import { loomMeans } from "./loom.js";
import { oldWarpMeans } from "./old-warp.js";
import { pieceMeans } from "./pieces.js";
import { weftMeans } from "./weft.js";
import { windingMeans } from "./winding.js";
import { yarnMeans } from "./yarns.js";
import type { Meanings } from "./meaning.js";

function under(group: string, keys: Meanings): Meanings {
  return Object.fromEntries(Object.entries(keys).map(([key, means]) => [`${group}.${key}`, means]));
}

/** What each key of a job means, by its written path; each stands beside its form. Made when it is asked for: only the schema does. */
export const meaningsOfKeys = (): Meanings => ({
  ...jobMeans,
  ...under("yarns.*", yarnMeans),
  ...under("loom", loomMeans),
  ...under("oldWarp", oldWarpMeans),
  ...under("join", joinMeans),
  ...under("cloth", clothMeans),
  ...under("warp", warpMeans),
  ...under("pieces.*", pieceMeans),
  ...under("weft", weftMeans),
  ...under("winding", windingMeans),
  ...under("found", foundMeans),
  ...under("costs", costsMeans),
  ...under("label", labelMeans),
});
