/** Text from a job file made fit for a terminal: no control character, no direction mark, on one line. */
export function plainText(text: string): string {
  return text.replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]+/gu, " ").trim();
}

const LONGEST = 80;

/** The beginning of a text that was refused, plain and not endless. */
export function shownText(text: string): string {
  const plain = plainText(text);
  return plain.length > LONGEST ? `${plain.slice(0, LONGEST)}…` : plain;
}
