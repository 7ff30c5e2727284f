import {
  centimetres,
  feet,
  grams,
  inches,
  kilograms,
  lengthReading,
  massReading,
  metres,
  millimetres,
  ounces,
  percentLost,
  pounds,
  yards,
} from "@thrum/maths";
import type { Loss, Reading } from "@thrum/maths";
import * as v from "valibot";
import type { AmountSchemas } from "./amounts.js";

function readText<Q>(what: string, remedy: string, read: (text: string) => Reading<Q>): v.GenericSchema<unknown, Q> {
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

const LOST = /^(\d{1,2}(?:\.\d{1,6})?) ?% lost$/u;
const lossAdvice =
  'a percentage lost, such as "9 % lost"|It is a part of what was there before; the key names the two states.';

const writtenLoss: v.GenericSchema<unknown, Loss> = v.pipe(
  v.string(lossAdvice),
  v.regex(LOST, lossAdvice),
  v.transform((text) => percentLost(LOST.exec(text)?.[1] ?? "")),
);

/** Amounts as a person writes them: `27 in`, `2 yd 6 in`, `68.5 cm`; `8 oz`; `9 % lost`. */
export const writtenAmounts: AmountSchemas = {
  length: readText("a length", "Write a number and its unit, such as 27 in or 2 yd 6 in.", (text) =>
    lengthReading(text, [yards, feet, inches, metres, centimetres, millimetres]),
  ),
  mass: readText("a mass", "Write a number and its unit, such as 8 oz or 200 g.", (text) =>
    massReading(text, [kilograms, grams, pounds, ounces]),
  ),
  loss: writtenLoss,
};
