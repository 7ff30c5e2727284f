// The length of a warp, seen from above: what is woven of it, what is cut from the loom, and what is never woven.
import { across, drawing, line, times, word } from "./strokes.mjs";

const [FRONT, FIRST, PIECE, BACK, REAR] = [20, 70, 130, 460, 620];
const HEM = 12;

/** Three pieces on the loom and the rest of the warp; one of them below, washed and hemmed. */
export function lengthOfWarp(named) {
  const piece = (at) => {
    const from = FIRST + at * PIECE;
    return (
      `<rect x="${from}" y="46" width="${PIECE}" height="44" fill="var(--wash)"/>` +
      line(`M${from + HEM} 46v44M${from + PIECE - HEM} 46v44`, 'stroke-dasharray="3"')
    );
  };
  const threads = times(5, (at) => line(`M${FRONT} ${50 + at * 9}H${REAR}`, 'stroke="var(--old)"'));
  const marks = [
    named("warp", (name) => across(FRONT, REAR, 26, name)),
    named("warpLeft", (name) => across(FIRST, REAR, 26, name)),
    named("pieces", (name) => word(FIRST + PIECE * 1.5, 73, name)),
    named("woven", (name) => across(FIRST, BACK, 104, name, true)),
    named("wovenLength", (name) => across(FIRST, FIRST + PIECE, 104, name, true)),
    named("loomWaste", (name) => across(BACK, REAR, 104, name, true)),
    named("takeUp", (name) => word(540, 43, `− ${name}`)),
    named("hemEachEnd", (name) => word(FIRST + PIECE + 10, 116, `${name}: to the dotted line`, "start")),
  ];
  const washed = named(
    "finishedLength",
    (name) =>
      `<rect x="${FIRST + 200}" y="128" width="92" height="38" fill="var(--wash)"/>` +
      across(FIRST + 200, FIRST + 292, 180, name, true),
  );
  const lost = named("loomToFinished", (name) => word(FIRST + 302, 152, `after ${name} and hemming`, "start"));
  const title = "A warp seen from above: pieces woven one after the other, and the rest that cannot be woven";
  return drawing(washed === "" ? 130 : 206, title, threads + times(3, piece) + marks.join("") + washed + lost);
}

/** One piece before and after. */
export function beforeAndAfter(named) {
  const cloth = (y, width) => `<rect x="60" y="${y}" width="${width}" height="34" fill="var(--wash)"/>`;
  return drawing(
    132,
    "The same piece measured twice: before, and shorter after",
    cloth(28, 420) +
      cloth(92, 360) +
      named("before", (name) => across(60, 480, 20, name)) +
      named("after", (name) => across(60, 420, 84, name)) +
      named("loss", (name) => across(420, 480, 84, name)),
  );
}

/** A hem turned under, seen from the side. */
export function hem(named) {
  return drawing(
    96,
    "The end of a piece from the side, its hem turned under",
    line("M40 40H560q16 0 16 12t-16 12H440q-10 0 -10 -6t10 -6H556", 'stroke-width="4"') +
      named("hemEachEnd", (name) => across(430, 576, 84, name)) +
      named("hemAtLoom", (name) => word(300, 30, `${name}: as much more as the cloth will lose`)),
  );
}
