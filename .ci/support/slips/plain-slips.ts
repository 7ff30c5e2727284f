// Plain slips of arithmetic as they come of long multiplication and long division: one digit product, carry or borrow wrong.
import type { Random } from "../random.js";

const digitsOf = (x: number): number[] => Array.from(String(x)).reverse().map(Number);

/** a × b by partial products, with one product of two digits taken from the next place of the table, or one carry lost. */
function wrongProduct(a: number, b: number, random: Random): number {
  const [over, under] = [digitsOf(a), digitsOf(b)];
  const [i, j] = [random.below(over.length), random.below(under.length)];
  const isCarry = random.below(2) === 0;
  let total = 0;
  under.forEach((y, row) => {
    let carry = 0;
    let line = 0;
    over.forEach((x, column) => {
      const isHere = column === i && row === j;
      const product = isHere && !isCarry ? Math.max(0, x + (random.below(2) === 0 ? 1 : -1)) * y : x * y;
      const digit = (product + carry) % 10;
      carry = Math.floor((product + carry) / 10);
      if (isHere && isCarry) carry = random.below(2) === 0 ? 0 : carry + 1;
      line += digit * 10 ** column;
    });
    total += (line + carry * 10 ** over.length) * 10 ** row;
  });
  return total;
}

/** a ÷ b to so many figures, with one figure of the quotient written one off, or one remainder wrong by a product or a borrow. */
function wrongQuotient(a: number, b: number, figures: number, random: Random): number {
  const at = random.below(figures);
  const isFigure = random.below(3) === 0;
  let place = 10 ** (Math.floor(Math.log10(a / b)) + 1);
  while (b * place > a) place /= 10;
  let rest = a;
  let quotient = 0;
  for (let figure = 0; figure < figures + 1; figure += 1) {
    const digit = Math.min(9, Math.max(0, Math.floor(rest / (b * place) + 1e-9)));
    const written =
      figure === at && isFigure ? Math.min(9, Math.max(0, digit + (random.below(2) === 0 ? 1 : -1))) : digit;
    rest -= digit * b * place;
    if (figure === at && !isFigure) {
      const column = 10 ** random.below(Math.max(1, Math.floor(Math.log10(b)) + 1));
      rest = Math.abs(rest + column * place * (random.below(9) + 1) * (random.below(2) === 0 ? 1 : -1));
    }
    quotient += written * place;
    place /= 10;
  }
  return quotient;
}

/** A number near the answer as a plain slip leaves it: in a long product, a long division, a last place, or wholly. */
export function plainSlip(answer: number, factors: readonly number[], figures: number, random: Random): number {
  const kind = random.below(10);
  const factor = factors[random.below(factors.length)] ?? 12;
  const scale = 10 ** Math.max(0, 2 - Math.floor(Math.log10(factor)));
  const whole = Math.max(2, Math.round(factor * scale));
  const size = 10 ** (Math.floor(Math.log10(answer)) - figures);
  if (kind < 4) {
    const other = Math.max(2, Math.round(answer / whole / (size / 10)));
    const power = 10 ** Math.max(0, Math.floor(Math.log10(other)) - figures);
    return wrongProduct(Math.round(other / power), whole, random) * (size / 10) * power;
  }
  if (kind < 8) return wrongQuotient(answer * whole, whole, figures, random);
  if (kind === 8) return answer + (random.below(9) + 1) * size * (random.below(2) === 0 ? 10 : -10);
  return answer * Math.exp((random.below(2001) - 1000) / 2500);
}
