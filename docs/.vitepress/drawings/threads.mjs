// Threads cut through, or laid side by side.
import { across, drawing, line, times, word } from "./strokes.mjs";

const TURNS = 14;
const circle = (x, y, r, fill) => `<circle cx="${x}" cy="${y}" r="${r}" fill="${fill}" stroke="none"/>`;

/** A weave cut along the weft: ends as circles, the weft passing between them. */
export function interlacing(named) {
  const x = (at) => 90 + at * 66;
  const weft = times(8, (at) => {
    const [from, to] = at % 2 === 0 ? [48, 92] : [92, 48];
    return `${at === 0 ? `M${x(0) - 33} ${(from + to) / 2}` : ""}Q${x(at) - 16} ${from} ${x(at)} ${from}T${x(at) + 33} 70`;
  });
  return drawing(
    142,
    "Plain weave cut along the weft: eight ends, and the weft between every two of them",
    times(8, (at) => circle(x(at), 70, 14, "var(--indigo)")) +
      line(weft, 'stroke="var(--accent)" stroke-width="3"') +
      named("ends", (name) => word(x(0), 22, `${name}: the circles of one repeat`, "start")) +
      named("intersections", (name) => word(x(0), 130, `${name}: where the line passes between them`, "start")),
  );
}

/** Yarn wound touching round a ruler. */
export function wraps(named) {
  return drawing(
    120,
    "Yarn wound round a ruler, each turn touching the last",
    '<rect x="60" y="44" width="520" height="40" fill="var(--wash)"/>' +
      times(27, (at) => line(`M${70 + at * 19} 84v-${at % 5 === 0 ? 14 : 7}`, 'stroke-width=".7"')) +
      times(TURNS, (at) => line(`M${170 + at * 14} 38l6 52`, 'stroke="var(--indigo)" stroke-width="12"')) +
      named("width", (name) => across(164, 164 + TURNS * 14, 26, name)) +
      named("wraps", (name) => word(164 + TURNS * 7, 112, `${name}: the turns`)),
  );
}

/** Ends of one length laid side by side. */
export function endsLaidOut(named) {
  return drawing(
    124,
    "Ends of one length side by side; end to end they are the yarn",
    times(7, (at) => line(`M120 ${40 + at * 10}H600`, 'stroke="var(--indigo)" stroke-width="3"')) +
      named("ends", (name) => word(108, 74, name, "end")) +
      named("warpLength", (name) => across(120, 600, 26, name), "warp"),
  );
}
