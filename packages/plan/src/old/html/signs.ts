import type { WarpPlan } from "../plan/warp-plan.js";
import { html } from "./markup.js";
import type { Markup } from "./markup.js";

/** How a colour is told from the others on paper without colour. */
export interface Sign {
  readonly letter: string;
  /** Name of its hatch. */
  readonly hatch: string;
}

const LETTERS = Array.from("ABCDEFGHIJKLMNOPQRSTUVWXYZ");

function letterFor(name: string, at: number, taken: readonly string[]): string {
  const own = Array.from(name.toUpperCase()).filter((letter) => LETTERS.includes(letter));
  const free = [...own, ...LETTERS].find((letter) => !taken.includes(letter));
  return free ?? String(at + 1);
}

/** Slants and level lines, near and far: nothing upright, which would look like stripes. */
const HATCHES = [
  { name: "white", lines: "" },
  { name: "black", lines: "M0 0h8v8h-8z" },
  { name: "rising", lines: "M0 8L8 0M-1 1L1 -1M7 9L9 7" },
  { name: "falling", lines: "M0 0L8 8M-1 7L1 9M7 -1L9 1" },
  { name: "level", lines: "M0 4H8" },
  { name: "crossed", lines: "M0 0L8 8M0 8L8 0" },
  { name: "close-rising", lines: "M0 4L4 0M0 8L8 0M4 8L8 4" },
  { name: "close-falling", lines: "M4 0L8 4M0 0L8 8M0 4L4 8" },
  { name: "close-level", lines: "M0 1H8M0 3H8M0 5H8M0 7H8" },
  { name: "dotted", lines: "M2 1v2M6 5v2" },
];

/** A letter and a hatch for each yarn of the warp; beyond ten yarns hatches come again, and the letter tells. */
export function signsOf({ yarns }: WarpPlan): ReadonlyMap<string, Sign> {
  const taken: string[] = [];
  return new Map(
    yarns.map(({ name }, at) => {
      const letter = letterFor(name, at, taken);
      taken.push(letter);
      return [name, { letter, hatch: HATCHES[at % HATCHES.length]?.name ?? "white" }];
    }),
  );
}

/** The hatches, to be put into a page once. */
export const hatchPatterns: Markup = html`<svg class="hatches" aria-hidden="true" focusable="false">
  <defs>
    ${HATCHES.map(
      ({ name, lines }) =>
        html`<pattern id="hatch-${name}" width="8" height="8" patternUnits="userSpaceOnUse">
          <rect width="8" height="8" fill="#fff" />
          <path d="${lines}" fill="${name === "black" ? "#000" : "none"}" stroke="#000" stroke-width="1.2" />
        </pattern>`,
    )}
  </defs>
</svg>`;

/** A colour by its letter, its hatch and its word. */
export function colourSign(colour: string, signs: ReadonlyMap<string, Sign>): Markup {
  const { letter, hatch } = signs.get(colour) ?? { letter: "", hatch: "white" };
  return html`<span class="colour"
    ><b>${letter}</b
    ><svg class="swatch" viewBox="0 0 32 24" aria-hidden="true" focusable="false">
      <rect x="1" y="1" width="30" height="22" fill="url(#hatch-${hatch})" stroke="#000" stroke-width="1.5" />
    </svg>
    <span>${colour}</span></span
  >`;
}
