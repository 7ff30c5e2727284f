import { compare, times } from "@thrum/maths";
import type { WarpPlan } from "../plan/warp-plan.js";
import { measuredText } from "./amounts.js";
import { plainText } from "./clean.js";
import { table, wrapped } from "./layout.js";

const BLANK = "______";

/** What must show with each shaft up, before the first pick. */
export function shedLines({ shedProof }: WarpPlan): readonly string[] {
  const rows = shedProof.map(({ shaft, ends, colours }) => [
    shaft,
    ends,
    colours.map(({ colour, ends: of }) => `${String(of)} ${plainText(colour)}`).join(", "),
  ]);
  return [
    ...wrapped(
      "Lift one shaft after the other and look. If a number is wrong, two ends are crossed or one is missing.",
    ),
    ...table(["shaft", "ends", "of which"], rows),
  ];
}

/** How much of each end is turned under. */
export function hemSentence({ hem }: WarpPlan["pieceTape"]): string {
  return compare(hem, times(hem, 0)) === 0
    ? "There is no hem."
    : `The hem at each end of it takes ${measuredText(hem, "nearest")} of that.`;
}

/** What is left of the warp, once some of it has been measured. */
export function leftSentences({ piecesLeft }: WarpPlan["pieceTape"]): readonly string[] {
  return piecesLeft === null
    ? []
    : [`What is left of the warp is enough for ${String(piecesLeft)} more of these pieces.`];
}

/** Where each piece stops. */
export function tapeLines({ pieceTape, picks, weftYarn }: WarpPlan): readonly string[] {
  const rows = pieceTape.marks.map(({ piece, at }) => [piece, measuredText(at, "nearest"), BLANK]);
  return [
    ...wrapped(
      `Weave with ${plainText(weftYarn)} at ${String(picks)}, counted at weaving tension. Each piece with its hems is ${measuredText(pieceTape.wovenLength, "nearest")} long on the loom. ${hemSentence(pieceTape)} Measure on the cloth from the first pick, pin the tape along with it, and never measure on the warp.`,
    ),
    ...table(["piece", "ends at", "woven to"], rows),
    ...leftSentences(pieceTape),
  ];
}

/** Blanks for the first inches and the four measures, as long as none has been written down. */
export function measureLines({ sett, picks, firstInches, found }: WarpPlan): readonly string[] {
  if (found !== null) return [];
  const blanks = ["width in the reed", "width at the fell", "width off the loom", "width washed and pressed"];
  const lengths = ["length at weaving tension", "length off the loom", "length washed and pressed"];
  return [
    ...(firstInches === null
      ? wrapped(
          `After the first inches count again: ${String(sett)} planned, ${BLANK} found; ${String(picks)} planned, ${BLANK} found. Where they differ, plan again with what was found.`,
        )
      : []),
    ...[...blanks, ...lengths].map((what) => `  ${what.padEnd(26)} ${BLANK}`),
    ...wrapped(
      "From these come the narrowing, the relaxation and the loss in the wash, each of the measure before it. Wet cloth from hot water scalds: let it cool, and test the wash on a sample first.",
    ),
  ];
}

/** What is kept for the next run. */
export function recordSentence({ ends, sett }: WarpPlan): string {
  return `Keep this plan with a sample of the cloth and a thread of each yarn, and write down what became of the old warp: ${String(ends)} ends at ${String(sett)} are now on the loom.`;
}

/** What is written down before it is forgotten. */
export function toRecord({ extraEnds }: WarpPlan): readonly string[] {
  return [
    "tied on",
    "cut off",
    "pieces, and of what length",
    "old warp left on the loom",
    ...(extraEnds.length === 0 ? [] : ["ends beside the warp, left"]),
    "what went wrong, and where",
  ];
}

/** The same in lines. */
export function recordLines(plan: WarpPlan): readonly string[] {
  return [...wrapped(recordSentence(plan)), ...toRecord(plan).map((what) => `  ${what.padEnd(28)} ${BLANK}`)];
}
