const LONGEST = 60;

/** Text of a file made fit for any screen: on one line, without a control character or a mark of direction. */
export function printable(text: string, longest: number = LONGEST): string {
  const clean = text.slice(0, longest).replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu, "�");
  return text.length > longest ? `${clean}…` : clean;
}
