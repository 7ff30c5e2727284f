// From what stands in the fields to the answer with its working, or to what is wrong, field by field.
import { Unread, valueOf } from "./typed.js";

/** What stands in the fields when the page opens, and in the field of the answer when it is what goes in. */
export const startOf = ({ fields, answerField }) =>
  Object.fromEntries([...fields, answerField].map(({ field, value, unit }) => [field, { value, unit }]));

/** What the formula makes of the fields: `faults` by field, "" for those of no field; else the sum. */
export function reckoned({ fields }, given, tools, badUnits) {
  const { calculation, explain } = tools;
  const faults = { ...badUnits };
  const input = {};
  for (const field of fields) {
    try {
      input[field.field] = valueOf(field, given[field.field], tools);
    } catch (error) {
      if (!(error instanceof Unread)) throw error;
      faults[field.field] ??= error.message;
    }
  }
  if (Object.keys(faults).length > 0) return { faults };
  try {
    return { faults, input, working: explain(calculation, input), answer: calculation(input) };
  } catch (error) {
    if (error.name !== "QuantityError") throw error;
    for (const { path, expected, remedy } of error.faults) {
      const known = fields.some(({ field }) => field === path[0]);
      const said = known ? `Here stands ${expected}.` : `${expected}: ${remedy}`;
      faults[known ? path[0] : ""] ??= said;
    }
    return { faults };
  }
}

/** The answer in the unit chosen, "=" where it is told whole. */
export function answerIn({ working, answer }, unit, { inUnit, quantityText, units }) {
  const { sign, value } = working.result;
  if (typeof answer === "number" || unit === answer.unit) return `${sign} ${value}`;
  const text = quantityText(inUnit(answer, units[unit]));
  return `${sign === "=" && !/\d{6}/u.test(text) ? "=" : "≈"} ${text}`;
}

/** A form asked the other way: the answer goes in, one of its inputs comes out. */
export function turnedForm(form, wanted) {
  const asked = form.fields.find(({ field }) => field === wanted);
  return {
    ...form,
    title: asked.label,
    fields: [form.answerField, ...form.fields.filter((field) => field !== asked)],
    answer: asked,
  };
}
