import { inches } from "@thrum/maths";
import type { Length } from "@thrum/maths";
import { keysOf, keysOfRow } from "../core/keys.js";
import type { Keys } from "../core/keys.js";
import type { Source } from "../core/source.js";
import { always } from "../core/wiring.js";
import type { Job } from "../job/job.js";
import type { JobPiece } from "../job/pieces.js";
import type { JobYarn } from "../job/yarns.js";

/** The keys of the job. */
export const job: Keys<Job, "plan"> = keysOf();

/** Those of one entry of the pieces, and of one yarn. */
export const ownPiece: Keys<JobPiece, "piece"> = keysOfRow("piece", "pieces", "*");
export const ownYarn: Keys<JobYarn, "yarn"> = keysOfRow("yarn", "yarns", "*");

/** No length: no hem, no fringe, no break. */
export const nothing: Source<Length> = always(inches(0));
