import { Decimal } from "../../engine/numbers.js";
import type { NumeralMarks } from "../../engine/quantity/index.js";
import type { Token } from "./tokens.js";

/** A numeral with its marks taken as the locale has them; null when they don't fit it. */
function numeral(written: string, { decimal, group }: NumeralMarks): Decimal | null {
  // A no-break or thin space between three digits and three groups them in every locale.
  const text = written.replace(/[\u00a0\u2009\u202f]/gu, "");
  const [given = "", part, more] = text.split(decimal);
  const whole = given === "" && text.startsWith(decimal) ? "0" : given;
  if (more !== undefined || part === "") return null;
  const groups = group === null ? [whole] : whole.split(group);
  const [first = "", ...rest] = groups;
  const grouped = rest.every((three) => /^\d{3}$/u.test(three)) && (rest.length === 0 || first.length <= 3);
  const digits = groups.join("");
  const fits = grouped && /^\d{1,40}$/u.test(digits) && (part === undefined || /^\d{1,40}$/u.test(part));
  return fits ? new Decimal(part === undefined ? digits : `${digits}.${part}`) : null;
}

function whole(token: Token | undefined): Decimal | null {
  return token?.kind === "digits" && /^\d{1,9}$/u.test(token.text) ? new Decimal(token.text) : null;
}

/** A fraction at this place: `1/2` takes three marks, `½` one. */
function fractionAt(tokens: readonly Token[], at: number): readonly [value: Decimal, next: number] | null {
  const token = tokens[at];
  if (token?.kind === "vulgar") return [new Decimal(token.over).div(token.under), at + 1];
  const [over, under] = [whole(token), whole(tokens[at + 2])];
  const slashed = tokens[at + 1]?.kind === "slash" && over !== null && under !== null && !under.isZero();
  return slashed ? [over.div(under), at + 3] : null;
}

/** Whether a hyphen joins what stands on both sides of it: close to both, and no minus. */
export function joins(hyphen: Token | undefined, next: Token | undefined): boolean {
  return hyphen?.kind === "hyphen" && hyphen.text !== "−" && !hyphen.spaced && next?.spaced === false;
}

/** The amount at this place: whole, decimal, fraction, or whole and fraction (`3 1/2`, `3-1/2`, `3½`). */
export function amountAt(
  tokens: readonly Token[],
  at: number,
  marks: NumeralMarks,
): readonly [value: Decimal, next: number] | null {
  const alone = fractionAt(tokens, at);
  if (alone !== null) return alone;
  const token = tokens[at];
  const value = token?.kind === "digits" ? numeral(token.text, marks) : null;
  if (value === null) return null;
  const joint = joins(tokens[at + 1], tokens[at + 2]) ? at + 2 : at + 1;
  const part = value.isInteger() ? fractionAt(tokens, joint) : null;
  return part === null || part[0].gte(1) ? [value, at + 1] : [value.plus(part[0]), part[1]];
}
