import * as v from "valibot";
import { shownText } from "../text/clean.js";
import { nearName } from "./near-name.js";

function whole(what: string, most: number, least = 1): v.GenericSchema<number, number> {
  const advice = `${what}, from ${String(least)} to ${String(most)}|`;
  return v.pipe(
    v.number(advice),
    v.check((given) => Number.isInteger(given) && given >= least && given <= most, advice),
  );
}

/** A whole number of things, from one up to more than any hand loom asks for. */
export function count(noun: string, most: number): v.GenericSchema<number, number> {
  return whole(`a whole number of ${noun}`, most);
}

/** A whole number of things that may be none. */
export function counted(noun: string, most: number): v.GenericSchema<number, number> {
  return whole(`a whole number of ${noun}`, most, 0);
}

/** A shaft by its number, from the one nearest the weaver or the farthest, as she counts them. */
export const shaft: v.GenericSchema<number, number> = whole("the whole number of a shaft", 100);

const FINEST = 1e-3;
const LARGEST = 1e6;

/** The number of a yarn, as its label gives it. */
export const yarnNumber: v.GenericSchema<number, number> = v.pipe(
  v.number("the number of the yarn|Write the number alone; the system has its own key."),
  v.check((given) => given >= FINEST && given <= LARGEST, "a number from 0.001 to 1000000|"),
);

/** A number above zero, whole or not. */
export function positive(noun: string, most: number): v.GenericSchema<number, number> {
  const advice = `a number of ${noun} above zero, up to ${String(most)}|`;
  return v.pipe(
    v.number(advice),
    v.check((given) => given > 0 && given <= most, advice),
  );
}

function readable(most: number): v.GenericSchema<string, string> {
  return v.pipe(
    v.string("some words|"),
    v.check((text) => shownText(text) !== "", "some words|"),
    v.maxLength(most, `at most ${String(most)} characters|Say it shorter.`),
  );
}

/** Words a person writes: not empty, and not a page long. */
export const words: v.GenericSchema<string, string> = readable(400);

/** A name short enough for a column of the plan. */
export const yarnName: v.GenericSchema<string, string> = readable(24);

/** One of a few phrases. */
export function oneOf<const W extends readonly string[]>(...phrases: W): v.GenericSchema<W[number], W[number]> {
  const expected = phrases.map((phrase) => `"${phrase}"`).join(" or ");
  return v.picklist(phrases, ({ input }) => {
    const near = typeof input === "string" ? nearName(input, phrases) : null;
    return `${expected}|${near === null ? "" : `Was "${near}" meant?`}`;
  });
}
