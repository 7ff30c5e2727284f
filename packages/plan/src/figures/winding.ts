import type { Part } from "../core/source.js";
import { all, always, field, orNone, own } from "../core/wiring.js";
import { waits } from "../core/waits.js";
import { worked } from "../core/worked.js";
import type { JobJoin } from "../job/join.js";
import { chainsOf } from "../parts/chains.js";
import type { Chains, MostEnds } from "../parts/chains.js";
import { facing, layingOf } from "../parts/laying.js";
import type { LaidChain } from "../parts/laying.js";
import { raddleRows } from "../parts/raddle.js";
import type { RaddleRow } from "../parts/raddle.js";
import { woundChain } from "../parts/winding.js";
import type { WoundChain } from "../parts/winding.js";
import * as limit from "./chain-limit.js";
import { job } from "./keys.js";
import * as loom from "./loom.js";
import { yarns } from "./rows.js";
import { groups } from "./tying.js";
import * as yarn from "./yarn.js";

const { part, partBy, firstOf } = worked("plan");
const none = always(null);

const mostByMass = part(
  { names: all(own(yarns, "yarn", "name")), ends: all(yarn.mostInChain) },
  ({ names, ends }): MostEnds => Object.fromEntries(names.map((name, at) => [name, ends[at] ?? 0])),
);
const mostEnds = part({ most: job.winding.most }, ({ most }): MostEnds => ("ends" in most ? most.ends : null));
/** Of one chain; by mass a number for each yarn. */
export const most: Part<MostEnds> = firstOf(partBy(limit.by, { ends: mostEnds, mass: mostByMass }), none);
/** The chains, the fewest, as nearly equal as the places for a cut allow. */
export const chains: Part<Chains> = part(
  { runs: field(loom.stripes, "runs"), groups, by: job.winding.chains, most },
  (given) => chainsOf(given.runs, given.groups, given.by, given.most),
);
/** Each as it is wound. */
export const wound: Part<readonly WoundChain[]> = part({ chains, groups, threads: job.winding.threads }, (given) =>
  given.chains.chains.map((chain) => woundChain(chain, given.groups, given.threads)),
);
/** The way the weaver faces at the knots: it follows from their place, but for knots behind the reed. */
export const faces: Part<NonNullable<JobJoin["faces"]>> = part(
  { knots: job.join.knots, faces: orNone(job.join.faces, none) },
  (given) => facing(given.knots, given.faces) ?? waits("join", "faces"),
);
/** The chains as they lie before her. */
export const laying: Part<readonly LaidChain[]> = part(
  { chains, endOneOn: job.loom.endOneOn, knots: job.join.knots, faces },
  ({ chains: { chains: made }, ...seat }) => (made.length === 0 ? waits("winding", "most") : layingOf(made, seat)),
);
/** How many ends lie up to each mark of the raddle. */
export const raddle: Part<readonly RaddleRow[]> = part(
  { teeth: job.winding.raddle, widthInReed: loom.widthInReed, sett: loom.sett, ends: loom.ends },
  raddleRows,
);
