import type { Source } from "../../engine/formula/index.js";
import { oneOf, readInputs } from "../../engine/formula/index.js";
import {
  baeuerlicheLeinenweberei,
  bergdala,
  encyclopedie1765,
  settSystems2014,
  sponsEncyclopaedia,
  taylor1909,
} from "../../sources/index.js";

/** How many ends one group of a warp held, by one source. */
export interface WarpGroup {
  readonly endsPerGroup: number;
  readonly source: Source;
  readonly at: string;
}

const group = (endsPerGroup: number, source: Source, at: string): WarpGroup =>
  Object.freeze({ endsPerGroup, source, at });

/** Beers and porters of a reed count dents, two ends in each; these are the ends. */
const NAMES = [
  "beer, Blackburn",
  "beer, Bolton",
  "beer, Bradford",
  "beer, Dewsbury",
  "porter, Leeds",
  "porter, Scotch tweed",
  "porter, Dundee",
  "portée, Lyons",
  "double portée, Lyons",
  "Gang, Hunsrück",
  "pasma, Sweden 1896",
] as const;

export type WarpGroupName = (typeof NAMES)[number];

/** Beers and porters of a reed count dents, two ends in each; these are the ends. */
const groups = (): Readonly<Record<WarpGroupName, WarpGroup>> => ({
  "beer, Blackburn": group(40, taylor1909, "p. 244 of the copy"),
  "beer, Bolton": group(40, taylor1909, "p. 243 of the copy"),
  "beer, Bradford": group(40, taylor1909, "p. 244 of the copy"),
  "beer, Dewsbury": group(38, settSystems2014, "entry Sett Systems"),
  "porter, Leeds": group(38, settSystems2014, "entry Sett Systems"),
  "porter, Scotch tweed": group(40, settSystems2014, "entry Sett Systems"),
  "porter, Dundee": group(40, sponsEncyclopaedia, "Jute Manufactures, part 7"),
  "portée, Lyons": group(80, encyclopedie1765, "vol. 15, velvets"),
  "double portée, Lyons": group(160, encyclopedie1765, "vol. 15, velvets"),
  "Gang, Hunsrück": group(40, baeuerlicheLeinenweberei, "subtitle 15"),
  "pasma, Sweden 1896": group(60, bergdala, "sections on yarn and reeds"),
});

/**
 * The ends in a customary group of a warp, by its name and place: the same word held other numbers elsewhere.
 *
 * @param name the word, and where it was used
 * @throws QuantityError "unknown-word" for a name that is none of them
 * @example warpGroup("porter, Leeds").endsPerGroup // 38
 */
export function warpGroup(name: WarpGroupName): WarpGroup {
  readInputs("warpGroup", { name: oneOf(NAMES, "the word, and where it was used") }, { name });
  return groups()[name];
}
