// What is measured where: a drawing for the formulas used most, its words those of the formula's own fields and lines.
import { calculations, maths } from "../pages/handbook.mjs";
import { oldWarp, turns } from "./board.mjs";
import { knotAtDent, oneDent, sley } from "./dents.mjs";
import { beforeAndAfter, hem, lengthOfWarp } from "./lengths.mjs";
import { endsLaidOut, interlacing, wraps } from "./threads.mjs";
import { endsAcross, picks, widths } from "./widths.mjs";

const DRAWN = {
  warpLength: lengthOfWarp,
  piecesFromWarp: lengthOfWarp,
  warpForOrder: lengthOfWarp,
  wovenLength: lengthOfWarp,
  lossFromMeasures: beforeAndAfter,
  hemAtLoom: hem,
  widthInReedFromFinished: widths,
  finishedWidth: widths,
  endsForWidth: endsAcross,
  weftLength: picks,
  picksInLength: picks,
  settOfSley: sley,
  reedForSley: sley,
  settByIntersections: interlacing,
  settByDiameter: interlacing,
  settByWraps: wraps,
  knotClearance: knotAtDent,
  spaceInDent: oneDent,
  oldWarpToKeep: oldWarp,
  yarnForEnds: endsLaidOut,
  turnsForLength: turns,
};

/** The drawing of a formula, a figure; nothing where it has none. A drawing that names nothing of the formula stops the build. */
export function drawingOf(formula) {
  const draw = DRAWN[formula];
  if (draw === undefined) return "";
  const { inputs, lines } = calculations.find(({ name }) => name === formula).declaration;
  const known = new Set([...Object.keys(inputs), ...lines.map(({ name }) => name)]);
  let marked = 0;
  const named = (field, mark, otherName = field) => {
    const own = [field, otherName].find((one) => known.has(one));
    if (own === undefined) return "";
    marked += 1;
    return mark(maths.inWords(own));
  };
  const svg = draw(named);
  if (marked < 2) throw new Error(`the drawing of ${formula} shows ${marked} of its measures`);
  return `<figure class="drawn" tabindex="0" aria-label="What is measured where">${svg}<figcaption>What is measured where; not to scale.</figcaption></figure>`;
}
