import { currency } from "@thrum/maths";
import type { Money } from "@thrum/maths";
import { decimalOf } from "./amounts.js";
import { Unreadable } from "./fault.js";
import { text } from "./form.js";
import type { Form, Notation } from "./form.js";

export const moneyNotation: Notation<Money> = {
  read: (written) => {
    const [, amount = "", name = ""] = /^(.+?) ?([A-Za-z]{1,20})$/u.exec(written) ?? [];
    const value = decimalOf(amount);
    if (value === null)
      throw new Unreadable("Write the amount and its currency, such as 14.50 EUR.", "unreadable", "money");
    if (Number(value) > 1e9) throw new Unreadable("Write a smaller amount.", "out-of-range");
    return currency(name)(value);
  },
  write: ({ value, unit }) => `${/\.\d$/u.test(value) ? `${value}0` : value} ${unit}`,
};
export const money: Form<Money> = text("money", "14.50 EUR", moneyNotation);
