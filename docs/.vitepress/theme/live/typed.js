// What people type into a field, read as its kind asks; and what is said where it cannot be read, in the words of the page.

/** What a field asks for, with an example: by what is counted, else by the kind of field. */
const ASKS = {
  length: "a length, such as 27 1/2 or 2 yd 6 in",
  mass: "a weight, such as 12 1/2 or 2 lb 3 oz",
  loss: "a percentage of what was there before, such as 8 or 8 1/2 %",
  addition: "a percentage to be added, such as 6 or 6 1/2 %",
  share: "a share of the whole, such as 80 or 80 %",
  "ends per length": "ends to a length, such as 20 or 20 ends per inch",
  "picks per length": "picks to a length, such as 18 or 18 picks per inch",
  "dents per length": "dents to a length, such as 10 or 10 dents per inch",
  "length per mass": "a yarn count, such as 20 or 20 cotton",
  "mass per length": "a yarn count, such as 30 or 30 tex",
  money: "an amount of money, such as 14.50",
  whole: "a whole number, such as 8",
  number: "a number, such as 12 or 3 1/2",
};

const COUNTS = ["length per mass", "mass per length"];
const PERCENTS = ["loss", "addition", "share"];

const asks = ({ of, dimension }) => ASKS[of === "quantity" ? dimension : of] ?? ASKS.number;

/** The keyboard a phone brings: digits alone only where no fraction or unit may be typed. */
export const keyboardOf = ({ of, what }) => (what !== "list" && of === "whole" ? "numeric" : undefined);

/** A fault of a field, to be shown beside it. */
export class Unread extends Error {}

/** A comma that can only mark decimals as a point; one that may group thousands is asked about. */
function withPoint(text) {
  if (/^\D*\d{1,3},\d{3}\D*$/u.test(text)) {
    const [whole, rest] = text.trim().split(",");
    throw new Unread(`${text.trim()} may be ${whole}.${rest} or ${whole}${rest}: write it without a comma.`);
  }
  return text.replace(/(\d),(\d)/gu, "$1.$2");
}

/** A number typed alone or with its unit; `tools` are the readers and units the formula’s module brings. */
function amountOf(typed, field, unit, { readers, units, decimalTextFrom }) {
  const fail = () => {
    throw new Unread(
      `${typed.trim() === "" ? "Nothing is written here" : `“${typed.trim()}” cannot be read`}: write ${asks(field)}.`,
    );
  };
  if (typed.trim() === "") fail();
  const text = withPoint(typed.trim());
  if (field.of !== "quantity") {
    try {
      return Number(decimalTextFrom(text));
    } catch {
      return fail();
    }
  }
  const { dimension } = field;
  const percent = PERCENTS.includes(dimension);
  if (COUNTS.includes(dimension) && /^[1-9]\d*\s*\/\s*[1-9]\d*$/u.test(text)) {
    const [one, other] = text.split("/").map(Number);
    const [count, plies] = one >= other ? [one, other] : [other, one];
    throw new Unread(
      `${text} is sold as ${plies} threads of ${count} folded together: write the single as ${count}, or the folded yarn by its own count.`,
    );
  }
  const bare = percent ? text.replace(/\s*(?:%|per ?cent)(?:\s+(?:lost|added|of (?:a|the) whole))?$/iu, "") : text;
  try {
    return units[unit](decimalTextFrom(bare));
  } catch (error) {
    if (error.name !== "QuantityError") throw error;
    const reader = readers[dimension];
    if (reader === undefined || percent) return fail();
    try {
      return reader(
        text,
        field.units.map((name) => units[name]),
      );
    } catch (other) {
      if (other.name !== "QuantityError") throw other;
      const { candidates } = other.faults[0].params;
      if (candidates?.length > 1) throw new Unread(`Which is meant: ${candidates.join(" or ")}?`, { cause: other });
      return fail();
    }
  }
}

/** What a field holds. */
export function valueOf(field, { value, unit }, tools) {
  if (field.what === "unit") return tools.units[unit];
  if (field.what === "word") return value;
  if (field.what !== "list") return amountOf(value, field, unit, tools);
  const parts = value.split(/;|\n/u).filter((one) => one.trim() !== "");
  if (parts.length === 0 && field.mayBeEmpty) return [];
  if (parts.length === 0) return amountOf("", field, unit, tools);
  return parts.map((one) => amountOf(one, field, unit, tools));
}
