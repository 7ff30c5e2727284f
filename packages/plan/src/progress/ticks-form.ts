import { Unreadable } from "../job/fault.js";
import { text } from "../job/form.js";
import type { Form } from "../job/form.js";
import { tidied } from "./ticks.js";
import type { Stretch, Ticks } from "./ticks.js";

const MOST = 20_000;
const STRETCH = /^(\d{1,5})(?: to (\d{1,5}))?$/u;

function stretchOf(written: string): Stretch {
  const [, first = "", last = first] = STRETCH.exec(written.trim()) ?? [];
  const [from, to] = [Number(first), Number(last)];
  if (from >= 1 && from <= to && to <= MOST) return { from, to };
  throw new Unreadable("Write such as 1 to 6, 8, or all, or none.");
}

export const ticks: Form<Ticks> = text<Ticks>("the numbers ticked off", "1 to 6, 8", {
  read: (written) => {
    if (written === "all") return written;
    return written === "none" ? [] : tidied(written.split(",").map(stretchOf));
  },
  write: (given) => {
    if (given === "all") return given;
    const parts = given.map(({ from, to }) => (from === to ? String(from) : `${String(from)} to ${String(to)}`));
    return parts.length === 0 ? "none" : parts.join(", ");
  },
});
