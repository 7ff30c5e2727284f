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

/** Where each piece stops. */
export function tapeLines({ pieceTape, picks, weftYarn }: WarpPlan): readonly string[] {
  const rows = pieceTape.marks.map(({ piece, at }) => [piece, measuredText(at, "nearest"), BLANK]);
  return [
    ...wrapped(
      `Weave with ${plainText(weftYarn)} at ${String(picks)}, counted at weaving tension. Each piece with its hems is ${measuredText(pieceTape.wovenLength, "nearest")} long on the loom. ${hemSentence(pieceTape)} Measure on the cloth from the first pick, pin the tape along with it, and never measure on the warp.`,
    ),
    ...table(["piece", "ends at", "woven to"], rows),
  ];
}

/** The first inches, measured, and the four measures that make the next plan better. */
export function measureLines({ sett, picks }: WarpPlan): readonly string[] {
  const blanks = ["width in the reed", "width at the fell", "width off the loom", "width washed and pressed"];
  const lengths = ["length at weaving tension", "length off the loom", "length washed and pressed"];
  return [
    ...wrapped(
      `After the first inches count again: ${String(sett)} planned, ${BLANK} found; ${String(picks)} planned, ${BLANK} found. Where they differ, plan again with what was found.`,
    ),
    ...[...blanks, ...lengths].map((what) => `  ${what.padEnd(26)} ${BLANK}`),
    ...wrapped(
      "From these come the narrowing, the relaxation and the loss in the wash, each of the measure before it. Wet cloth from hot water scalds: let it cool, and test the wash on a sample first.",
    ),
  ];
}
