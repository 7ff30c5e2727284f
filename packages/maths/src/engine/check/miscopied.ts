/** A number as it could be misread or miscopied: how, and what then stands there. */
export type MiscopiedDigits = readonly [how: string, text: string];

const LONGEST = 12;

/** The readings of a written number with two digits changed over, one digit dropped, or the point moved. */
export function miscopied(text: string): readonly MiscopiedDigits[] {
  if (text.length > LONGEST) return [];
  const found = new Map<string, string>();
  const put = (how: string, changed: string): void => {
    const plain = String(Number(changed));
    if (Number(changed) !== Number(text) && Number(changed) > 0 && !found.has(plain)) found.set(plain, how);
  };
  const digits = Array.from(text);
  digits.forEach((digit, at) => {
    const next = digits[at + 1];
    if (next !== undefined && digit !== "." && next !== ".")
      put("two digits changed over", `${text.slice(0, at)}${next}${digit}${text.slice(at + 2)}`);
    if (digit !== "." && digits.length > 1) put("a digit dropped", `${text.slice(0, at)}${text.slice(at + 1)}`);
  });
  put("the point moved", String(Number((Number(text) * 10).toPrecision(LONGEST))));
  put("the point moved", String(Number((Number(text) / 10).toPrecision(LONGEST))));
  return [...found].map(([changed, how]) => [how, changed]);
}
