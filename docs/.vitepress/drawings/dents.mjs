// A reed near by: its wires, its dents, and the ends drawn through them.
import { across, down, drawing, line, times, word } from "./strokes.mjs";

const [LEFT, DENT] = [80, 60];
const wire = (at) =>
  `<rect x="${LEFT + at * DENT - 5}" y="34" width="10" height="70" fill="var(--old)" stroke="none"/>`;

/** Ends in the dents, as one sleying has them: some hold two, some one. */
function reedWith(perDent) {
  const ends = perDent.flatMap((count, at) =>
    Array.from({ length: count }, (_, own) => {
      const x = LEFT + at * DENT + (DENT * (own + 1)) / (count + 1);
      return `<circle cx="${x}" cy="69" r="7" fill="var(--indigo)" stroke="none"/>`;
    }),
  );
  return times(perDent.length + 1, wire) + ends.join("");
}

/** A sley written as dents and ends in each. */
export function sley(named) {
  return drawing(
    150,
    "Eight dents of a reed with two, two and one end in them by turns",
    reedWith([2, 2, 1, 2, 2, 1, 2, 2]) +
      named("reed", (name) => across(LEFT, LEFT + 8 * DENT, 24, `${name}: dents to a length`), "settOfReed") +
      named("dents", (name) => across(LEFT, LEFT + 2 * DENT, 116, name, true)) +
      named("endsPerDent", (name) => word(LEFT + 2.5 * DENT, 132, `1 of ${name}`)) +
      named("sett", (name) => word(LEFT + 6 * DENT, 132, `${name}: ends to the same length`)),
  );
}

/** A knot before the dent it has to pass, and before the eye. */
export function knotAtDent(named) {
  const knot = '<ellipse cx="170" cy="69" rx="26" ry="20" fill="var(--soft)" stroke="none"/>';
  const old = line("M20 69H150", 'stroke="var(--old)" stroke-width="10"');
  const fresh = line("M190 69H300", 'stroke="var(--indigo)" stroke-width="10"');
  const wires = '<path d="M320 40h140M320 98h140" stroke="var(--old)" stroke-width="10"/>';
  return drawing(
    132,
    "A knot of an old and a new thread before the dent it has to pass",
    old +
      fresh +
      knot +
      wires +
      named("space", (name) => down(390, 45, 93, name)) +
      named("oldDiameter", (name) => word(70, 56, name)) +
      named("newDiameter", (name) => word(254, 56, name)) +
      named("diameter", (name) => word(170, 40, `knot ${name}`)),
  );
}

/** A wire and the space beside it. */
export function oneDent(named) {
  return drawing(
    130,
    "Three wires of a reed and the space between two of them",
    times(3, (at) => `<rect x="${160 + at * 140}" y="34" width="28" height="66" fill="var(--old)" stroke="none"/>`) +
      named("pitch", (name) => across(160, 300, 24, name)) +
      named("space", (name) => across(188, 300, 112, name, true)) +
      named("open", (name) => word(340, 118, `${name}: the part of the pitch that is free`, "start")),
  );
}
