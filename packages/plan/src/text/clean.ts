const LONGEST = 80;

/** Text from a job file made fit for a terminal: no control character, no direction mark, one line, not endless. */
export function shownText(text: string): string {
  const plain = text.replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]+/gu, " ").trim();
  return plain.length > LONGEST ? `${plain.slice(0, LONGEST)}…` : plain;
}
