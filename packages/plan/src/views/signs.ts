import type { Job } from "../job/job.js";

/** How a colour is told from the others on paper without colour. */
export interface Sign {
  readonly letter: string;
  /** Name of its hatch. */
  readonly hatch: string;
}

export type Signs = ReadonlyMap<string, Sign>;

const LETTERS = Array.from("ABCDEFGHIJKLMNOPQRSTUVWXYZ");

function letterFor(name: string, at: number, taken: readonly string[]): string {
  const own = Array.from(name.toUpperCase()).filter((letter) => LETTERS.includes(letter));
  const free = [...own, ...LETTERS].find((letter) => !taken.includes(letter));
  return free ?? String(at + 1);
}

/** Slants and level lines, near and far, light to dark: nothing upright, which would look like stripes. */
export const HATCHES = [
  { name: "white", lines: "" },
  { name: "dotted", lines: "M2 1v2M6 5v2" },
  { name: "level", lines: "M0 4H8" },
  { name: "rising", lines: "M0 8L8 0M-1 1L1 -1M7 9L9 7" },
  { name: "falling", lines: "M0 0L8 8M-1 7L1 9M7 -1L9 1" },
  { name: "crossed", lines: "M0 0L8 8M0 8L8 0" },
  { name: "close-level", lines: "M0 1H8M0 3H8M0 5H8M0 7H8" },
  { name: "close-rising", lines: "M0 4L4 0M0 8L8 0M4 8L8 4" },
  { name: "close-falling", lines: "M4 0L8 4M0 0L8 8M0 4L4 8" },
  { name: "black", lines: "M0 0h8v8h-8z" },
] as const;

/** Without a colour seen nothing is drawn white or black: it would be taken for the yarn's own. */
const NEITHER = HATCHES.slice(1, -1);

/** How light a colour of a screen looks, from 0 to 255; none where it is no colour. */
function lightness(seen: string | undefined): number | null {
  const parts = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/iu.exec(seen ?? "");
  if (parts === null) return null;
  const [red = 0, green = 0, blue = 0] = parts.slice(1).map((part) => parseInt(part, 16));
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** Hatches by place: light to dark where all colours are seen, else by turns those that are neither white nor black. */
function hatches(light: readonly (number | null)[]): readonly string[] {
  if (light.some((one) => one === null)) return light.map((_, at) => NEITHER[at % NEITHER.length]?.name ?? "level");
  const order = light.map((one, at) => ({ at, light: one ?? 0 })).sort((a, b) => b.light - a.light || a.at - b.at);
  const ends = { first: (order[0]?.light ?? 0) > LIGHT, last: (order.at(-1)?.light ?? 255) < DARK };
  const ladder = HATCHES.slice(ends.first ? 0 : 1, ends.last ? undefined : -1);
  const places = order.map(({ at }, rank) => {
    const step = order.length === 1 ? 0 : Math.round((rank * (ladder.length - 1)) / (order.length - 1));
    return [at, ladder[order.length > ladder.length ? rank % ladder.length : step]?.name ?? "level"] as const;
  });
  const byPlace = new Map(places);
  return light.map((_, at) => byPlace.get(at) ?? "level");
}

/** White and black stand only for colours that are nearly so. */
const [LIGHT, DARK] = [170, 60];

/** A letter and a hatch for each yarn; beyond ten yarns hatches come again, and the letter tells. */
export function signsOf(names: readonly string[], { yarns = {} }: Job): Signs {
  const taken: string[] = [];
  const drawn = hatches(names.map((name) => lightness(Object.hasOwn(yarns, name) ? yarns[name]?.seen : undefined)));
  return new Map(
    names.map((name, at) => {
      const letter = letterFor(name, at, taken);
      taken.push(letter);
      return [name, { letter, hatch: drawn[at] ?? "level" }];
    }),
  );
}
