import {
  centimetres,
  currency,
  feet,
  grams,
  inches,
  kilograms,
  lengthReading,
  massReading,
  metres,
  millimetres,
  ounces,
  percentAdded,
  percentLost,
  pounds,
  yards,
} from "@thrum/maths";
import type { Addition, Loss, Money, Reading } from "@thrum/maths";
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

const ADDED = /^(\d{1,3}(?:\.\d{1,6})?) ?% added$/u;
const addedAdvice =
  'a percentage added, such as "8.5 % added"|It is a part of what it is added to; the key names that.';

const writtenAddition: v.GenericSchema<unknown, Addition> = v.pipe(
  v.string(addedAdvice),
  v.regex(ADDED, addedAdvice),
  v.transform((text) => percentAdded(ADDED.exec(text)?.[1] ?? "")),
);

const MONEY = /^(\d{1,9}(?:\.\d{1,4})?) ?([A-Za-z]{1,20})$/u;
const moneyAdvice = 'an amount of money, such as "14.50 EUR"|Write the number, then the currency by its code or name.';

const writtenMoney: v.GenericSchema<unknown, Money> = v.pipe(
  v.string(moneyAdvice),
  v.regex(MONEY, moneyAdvice),
  v.transform((text) => {
    const [, amount = "", name = ""] = MONEY.exec(text) ?? [];
    return currency(name)(amount);
  }),
);

/** Amounts as a person writes them: `27 in`, `2 yd 6 in`, `68.5 cm`; `8 oz`; `9 % lost`, `8.5 % added`; `14.50 EUR`. */
export const writtenAmounts: AmountSchemas = {
  length: readText("a length", "Write a number and its unit, such as 27 in or 2 yd 6 in.", (text) =>
    lengthReading(text, [yards, feet, inches, metres, centimetres, millimetres]),
  ),
  mass: readText("a mass", "Write a number and its unit, such as 8 oz or 200 g.", (text) =>
    massReading(text, [kilograms, grams, pounds, ounces]),
  ),
  loss: writtenLoss,
  addition: writtenAddition,
  money: writtenMoney,
};
