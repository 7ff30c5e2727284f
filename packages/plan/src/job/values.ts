import {
  centimetres,
  feet,
  grams,
  inches,
  kilograms,
  metres,
  millimetres,
  ounces,
  percentLost,
  pounds,
  yards,
} from "@thrum/maths";
import { compare, lengthReading, massReading, times } from "@thrum/maths";
import type { Length, Loss, Mass, Quantity, Reading } from "@thrum/maths";
import * as v from "valibot";

type Text = v.GenericSchema<string, string>;
type AsRead<Q> = v.GenericSchema<string, Q>;

/** A value the file holds as text, read by one of the readers of the maths. */
function readText<Q>(what: string, remedy: string, read: (text: string) => Reading<Q>): AsRead<Q> {
  return v.pipe(
    v.string(`${what}|${remedy}`),
    v.rawTransform(({ dataset, addIssue, NEVER }) => {
      const found = read(dataset.value);
      if (found.ok) return found.value;
      addIssue({ message: `${what}|${found.faults[0]?.remedy ?? remedy}` });
      return NEVER;
    }),
  );
}

function atLeast<Q extends Quantity<string>>(schema: AsRead<Q>, fits: (value: Q) => boolean, what: string): AsRead<Q> {
  return v.pipe(schema, v.check(fits, `${what}|`));
}

const lengthText: AsRead<Length> = readText(
  "a length",
  "Write a number and its unit, such as 27 in or 2 yd 6 in.",
  (text) => lengthReading(text, [yards, feet, inches, metres, centimetres, millimetres]),
);
const massText: AsRead<Mass> = readText("a mass", "Write a number and its unit, such as 8 oz or 200 g.", (text) =>
  massReading(text, [kilograms, grams, pounds, ounces]),
);
const sign = <D extends string>(quantity: Quantity<D>): number => compare(quantity, times(quantity, 0));

/** A length such as `27 in`, `2 yd 6 in`, `68.5 cm`, above zero. */
export const someLength: AsRead<Length> = atLeast(lengthText, (length) => sign(length) > 0, "a length above zero");
/** A length that may be nothing. */
export const anyLength: AsRead<Length> = atLeast(lengthText, (length) => sign(length) >= 0, "a length of zero or more");
/** A mass above zero. */
export const someMass: AsRead<Mass> = atLeast(massText, (mass) => sign(mass) > 0, "a mass above zero");
/** A mass that may be nothing. */
export const anyMass: AsRead<Mass> = atLeast(massText, (mass) => sign(mass) >= 0, "a mass of zero or more");

const LOST = /^(\d{1,2}(?:\.\d{1,6})?) ?% lost$/u;
const lossAdvice =
  'a percentage lost, such as "9 % lost"|It is a part of what was there before; the key names the two states.';

/** A percentage lost, of what was there before: `9 % lost`. */
export const someLoss: AsRead<Loss> = v.pipe(
  v.string(lossAdvice),
  v.regex(LOST, lossAdvice),
  v.transform((text) => percentLost(LOST.exec(text)?.[1] ?? "")),
);

/** A whole number of things, one or more. */
export function count(noun: string, least = 1): v.GenericSchema<number, number> {
  const advice = `a whole number of ${noun}, ${String(least)} or more|`;
  return v.pipe(v.number(advice), v.safeInteger(advice), v.minValue(least, advice));
}

/** Words a person writes: not empty, and not a page long. */
export const words: Text = v.pipe(
  v.string("some words|"),
  v.minLength(1, "some words|"),
  v.maxLength(200, "at most 200 characters|Say it shorter."),
);

/** One of a few phrases. */
export function oneOf<const W extends readonly string[]>(...phrases: W): v.GenericSchema<W[number], W[number]> {
  return v.picklist(phrases, `${phrases.map((phrase) => `"${phrase}"`).join(" or ")}|`);
}
