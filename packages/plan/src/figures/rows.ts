import { worked } from "../core/worked.js";
import type { Part } from "../core/source.js";
import { all, always, orNone, own } from "../core/wiring.js";
import { entryRows } from "../parts/entry-rows.js";
import type { EntryRow } from "../parts/entry-rows.js";
import { sizeRows } from "../parts/size-rows.js";
import type { SizeRow } from "../parts/size-rows.js";
import { weftRows } from "../parts/weft-rows.js";
import type { WeftRow } from "../parts/weft-rows.js";
import { yarnRows } from "../parts/yarn-rows.js";
import type { YarnRow } from "../parts/yarn-rows.js";
import { job } from "./keys.js";

const { part } = worked("plan");
const none = always(null);

/** The entries of the pieces in the order of weaving, the breaks between them one row more. */
export const entries: Part<readonly EntryRow[]> = part(
  { pieces: job.pieces, between: orNone(job.betweenPieces.length, orNone(job.betweenPieces.picks, none)) },
  ({ pieces, between }) => entryRows(pieces, between !== null),
);

/** The yarns woven into each entry. */
export const wefts: Part<readonly WeftRow[]> = part(
  {
    entries,
    pieces: job.pieces,
    weft: orNone(job.weft.stripes, none),
    between: orNone(job.betweenPieces.weft, none),
  },
  weftRows,
);

/** The yarns in the order of the stripes, of the weft, of what is wound beside the warp. */
export const yarns: Part<readonly YarnRow[]> = part(
  {
    stripes: orNone(job.stripes, none),
    weft: orNone(job.weft.stripes, none),
    pieces: orNone(job.pieces, none),
    between: orNone(job.betweenPieces.weft, none),
    extra: orNone(job.winding.extra, none),
  },
  yarnRows,
);

/** The sizes of each yarn that is sold in several. */
export const sizes: Part<readonly SizeRow[]> = part(
  { yarns: orNone(job.yarns, always({})), names: all(own(yarns, "yarn", "name")) },
  sizeRows,
);
