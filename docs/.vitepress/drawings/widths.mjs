// The width of a warp: in the reed, in the cloth that draws in, and washed.
import { across, down, drawing, line, times, word } from "./strokes.mjs";

const [LEFT, RIGHT] = [80, 560];

const reed = (y) =>
  `<rect x="${LEFT - 20}" y="${y}" width="${RIGHT - LEFT + 40}" height="16"/>` +
  times(41, (at) => line(`M${LEFT - 16 + at * 12.8} ${y}v16`, 'stroke-width=".6"'));

/** Reed, cloth drawn in below it, and the washed piece. */
export function widths(named) {
  const washed = named(
    "finishedWidth",
    (name) => '<rect x="130" y="132" width="380" height="26" fill="var(--wash)"/>' + across(130, 510, 172, name, true),
    "finished",
  );
  return drawing(
    196,
    "A warp in the reed, the cloth drawn in below it, and the same cloth washed",
    reed(34) +
      line(`M${LEFT} 50Q100 62 108 112H532Q540 62 ${RIGHT} 50Z`, 'fill="var(--wash)"') +
      named("widthInReed", (name) => across(LEFT, RIGHT, 24, name)) +
      named("reedToFinished", (name) => word(320, 124, `− ${name}`)) +
      washed,
  );
}

/** Ends across the reed, in repeats of the threading. */
export function endsAcross(named) {
  const ends = times(33, (at) => line(`M${LEFT + at * 15} 50v46`, at % 8 === 0 ? 'stroke-width="3"' : ""));
  return drawing(
    132,
    "Ends from the first to the last in the reed, in repeats of the threading",
    reed(34) +
      ends +
      named("widthInReed", (name) => across(LEFT, RIGHT, 24, name)) +
      named("sett", (name) => word(LEFT - 8, 80, name, "end")) +
      named("threadingRepeat", (name) => across(LEFT, LEFT + 120, 108, name, true)) +
      named("balanceEnds", (name) => word(RIGHT + 8, 80, name, "start")),
  );
}

/** Picks going to and fro across the width. */
export function picks(named) {
  const [left, right] = [LEFT, RIGHT - 60];
  const rows = times(6, (at) => `${at % 2 === 0 ? `H${right}` : `H${left}`}${at < 5 ? "v12" : ""}`);
  return drawing(
    128,
    "The weft going to and fro across the width in the reed",
    line(`M${left} 46${rows}`, 'stroke="var(--indigo)" stroke-width="3"') +
      named("widthInReed", (name) => across(left, right, 28, name)) +
      named("wovenLength", (name) => down(right + 14, 46, 106, name)) +
      named("picks", (name) => word(left - 10, 80, name, "end")),
  );
}
