import type { Block } from "./block.js";
import { colourSign } from "./html-parts.js";
import { html } from "./markup.js";
import type { Markup } from "./markup.js";
import type { Signs } from "./signs.js";

const [WIDE, HIGH] = [1000, 110];
/** A narrower stripe has no room for its letter; more stripes than these are no picture. */
const [FOR_A_LETTER, MOST] = [16, 600];

/** The stripes as threads, true to their proportion, with their letters; a blend in bands of its hand. */
export function pictureMarkup({ stripes }: Extract<Block, { is: "picture" }>, signs: Signs): Markup {
  const ends = stripes.reduce((total, stripe) => total + stripe.ends, 0);
  if (stripes.length > MOST || ends === 0) return html``;
  let before = 0;
  const drawn = stripes.map(({ yarns, ends: own }) => {
    const from = (before / ends) * WIDE;
    const width = (own / ends) * WIDE;
    before += own;
    const bands =
      yarns.length === 1 ? 1 : yarns.length * Math.max(1, Math.min(6, Math.round(width / 8 / yarns.length)));
    const rects = Array.from({ length: bands }, (_, band) => {
      const hatch = signs.get(yarns[band % yarns.length] ?? "")?.hatch ?? "level";
      return html`<rect
        x="${(from + (band * width) / bands).toFixed(2)}"
        y="4"
        width="${(width / bands).toFixed(2)}"
        height="${HIGH - 34}"
        fill="url(#hatch-${hatch})"
        stroke="#000"
        stroke-width="${bands === 1 ? 1 : 0.3}"
      />`;
    });
    const letters = [...new Set(yarns)].map((yarn) => signs.get(yarn)?.letter ?? "").join("");
    const letter =
      width < FOR_A_LETTER * letters.length
        ? html``
        : html`<text x="${(from + width / 2).toFixed(2)}" y="${HIGH - 8}" text-anchor="middle">${letters}</text>`;
    return html`${rects}${letter}`;
  });
  return html`<svg
      class="picture"
      viewBox="0 0 ${WIDE} ${HIGH}"
      preserveAspectRatio="none"
      role="img"
      aria-label="The stripes, end 1 first"
    >
      <g font-size="20" font-family="Arial, Helvetica, sans-serif">${drawn}</g>
    </svg>
    <p class="key">${[...signs.keys()].map((name) => colourSign(name, signs))}</p>`;
}
