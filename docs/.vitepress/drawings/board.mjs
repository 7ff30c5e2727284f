// Round the pegs of a warping board, and from the reed to behind the heddles.
import { across, drawing, line, times, word } from "./strokes.mjs";

/** Turns between two rows of pegs. */
export function turns(named) {
  const [left, right] = [140, 500];
  const peg = (x) => (at) => `<circle cx="${x}" cy="${36 + at * 24}" r="6" fill="var(--soft)" stroke="none"/>`;
  const path = times(3, (at) => `H${right}a12 12 0 0 1 0 24H${left}${at < 2 ? "a12 12 0 0 0 0 24" : ""}`);
  return drawing(
    176,
    "Yarn going round the pegs of a warping board; a turn is there and back",
    times(6, peg(left)) +
      times(6, peg(right)) +
      line(`M${left} 24${path}`, 'stroke="var(--indigo)" stroke-width="2.5"') +
      named("turns", (name) => word(320, 164, `${name}: there and back is one`)) +
      named("measuredTurn", (name) => word(320, 42, `${name}: along the yarn`)),
  );
}

/** From the breast beam to the warp beam, from the side. */
export function oldWarp(named) {
  const shaft = (at) => line(`M${330 + at * 16} 40v60`, 'stroke-width="2"');
  return drawing(
    142,
    "The old warp from the side: past the reed, to the heddles, and behind them",
    line("M60 70H580", 'stroke="var(--old)" stroke-width="3"') +
      line("M200 34v72", 'stroke-width="5"') +
      times(4, shaft) +
      word(200, 26, "reed") +
      word(354, 26, "shafts") +
      named("pastReed", (name) => across(60, 200, 118, name, true)) +
      named("reedToHeddles", (name) => across(200, 378, 118, name, true)) +
      named("behindHeddles", (name) => across(378, 580, 118, name, true)),
  );
}
