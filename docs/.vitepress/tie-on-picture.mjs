// The job in one picture: the old warp grey from the heddles, the new stripes below, the knots between, half of them tied.
import { paints, warp } from "./napkins.mjs";

/** Ends to a line: every end would be a grey blur. */
const ENDS_A_LINE = 4;
const STEP = 7;
const LEFT = 8;
const REED = 58;
const KNOTS = 80;
const FOOT = 166;

/** The colour of a line: of the end in the middle of those it stands for. */
function colours() {
  const lines = Math.round(warp.ends / ENDS_A_LINE);
  const all = warp.runs ?? warp.written;
  return Array.from({ length: lines }, (_, line) => {
    let end = line * ENDS_A_LINE + ENDS_A_LINE / 2;
    return all.find(({ ends }) => (end -= ends) <= 0).colour;
  });
}

const path = (d, more) => `<path d="${d}" ${more}/>`;

export function tieOn() {
  const lines = colours();
  const tied = Math.round(lines.length * 0.64);
  const x = (line) => LEFT + line * STEP;
  const width = x(lines.length - 1) + LEFT;
  const every = (one, from = 0, to = lines.length) =>
    Array.from({ length: to - from }, (_, at) => one(x(from + at), from + at)).join("");
  const knotAt = (line) => KNOTS + (line % 2) * 7;
  const old = every((at, line) => `M${at} 0V${line < tied ? knotAt(line) : KNOTS - 8 - ((line * 5) % 9)}`);
  const fresh = [...paints].map(([name, { fill }]) => {
    const own = every((at, line) => {
      if (lines[line] !== name) return "";
      return line < tied
        ? `M${at} ${knotAt(line)}V${FOOT}`
        : `M${at + 4} ${KNOTS + 26 + ((line * 7) % 11)}Q${at} 128 ${at} 140V${FOOT}`;
    });
    return path(
      own,
      `stroke="${name === "natural" ? "var(--natural)" : name === "indigo" ? "var(--indigo)" : fill}" stroke-width="5"`,
    );
  });
  const knots = every((at, line) => `M${at} ${knotAt(line)}h0`, 0, tied);
  const heddles = every((at, line) => `M${at} ${6 + (line % 4) * 5}v16`);
  const word = (at, y, text, anchor = "start") =>
    `<text x="${at}" y="${y}" text-anchor="${anchor}" class="word">${text}</text>`;
  return `<figure class="tie-on"><svg viewBox="0 0 ${width} ${FOOT}" role="img" aria-label="Seen from above: the old grey warp comes from the heddles through the reed; knots in front of the reed join it to the new natural, madder and indigo stripes. On the right the ends are still to be tied." preserveAspectRatio="xMidYMid slice" fill="none">
${path(old, 'stroke="var(--old)" stroke-width="1.6"')}${path(heddles, 'stroke="var(--soft)" stroke-width="2.6"')}
<rect x="0" y="${REED - 7}" width="${width}" height="14" fill="var(--paper)" opacity=".55"/>${path(`M0 ${REED - 7}H${width}M0 ${REED + 7}H${width}`, 'stroke="var(--ink)" stroke-width="2.4"')}
${fresh.join("")}${path(knots, 'stroke="var(--ink)" stroke-width="6" stroke-linecap="round"')}
<g fill="var(--ink)">${word(x(tied) + 12, KNOTS + 16, "still to tie")}</g></svg><figcaption>The hall’s napkins, from above: old warp, heddles and reed; the knots; ${warp.ends} new ends (a line for ${ENDS_A_LINE}).</figcaption></figure>`;
}
