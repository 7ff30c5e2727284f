import { check } from "../refusal/check.js";
import { oneOf, someEnds } from "../refusal/kinds.js";
import type { Sequence } from "../sequence/sequence.js";
import { aLegend, type Legend, nameOf } from "./legend.js";
import { type Repeat, repeats } from "./repeats.js";

export interface WrittenListInput<C> {
  readonly sequence: Sequence<C>;
  readonly legend: Legend<C>;
  /** `4 dark, 4 light, 4 dark` · `[4 dark, 4 light] 6 times` · `48 DDDD/LLLL`, for names of one letter. */
  readonly repeats: "written out" | "in brackets" | "as groups";
}

const NAME = /^(?=.{1,40}$)[^\s\d,;[\]=/]+(?: [^\s,;[\]=/]+)*$/u;
/** Whether a colour may be called so. */
export function isName(text: string): boolean {
  return NAME.test(text);
}

export const aNameLegend: ReturnType<typeof aLegend> = /* @__PURE__ */ aLegend(
  NAME,
  "a name that begins with no figure and holds none of , ; [ ] = /",
);

/**
 * A list with the number first and the total last, as mills and weavers write it.
 *
 * @throws StripeError for a colour without a name
 * @example
 * const half = sequence([{ colour: "ash", ends: 12 }, { colour: "coal", ends: 4 }]);
 * writtenList({ sequence: half, legend: { pink: "ash", black: "coal" }, repeats: "written out" }) // "12 pink, 4 black = 16 ends"
 */
export function writtenList<C>(input: WrittenListInput<C>): string {
  check("writtenList", input, {
    sequence: someEnds,
    legend: aNameLegend,
    repeats: oneOf("written out", "in brackets", "as groups"),
  });
  const { sequence, legend } = input;
  const named = sequence.written.map(({ colour, ends }) => ({ colour: nameOf("writtenList", legend, colour), ends }));
  const parts = input.repeats === "written out" ? [{ group: named, times: 1 }] : repeats(named);
  const items = parts.map((part) => (input.repeats === "as groups" ? grouped(part) : bracketed(part)));
  return `${items.join(", ")} = ${sequence.ends} ends`;
}

function bracketed({ group, times }: Repeat<string>): string {
  const list = group.map(({ colour, ends }) => `${ends} ${colour}`).join(", ");
  return times === 1 ? list : `[${list}] ${times} times`;
}

function grouped(part: Repeat<string>): string {
  const { group, times } = part;
  const short = group.length > 1 && group.every(({ colour, ends }) => colour.length === 1 && ends < 10);
  if (!short) return bracketed(part);
  const letters = group.map(({ colour, ends }) => colour.repeat(ends)).join("/");
  return `${times * group.reduce((sum, { ends }) => sum + ends, 0)} ${letters}`;
}
