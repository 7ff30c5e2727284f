const EIGHTHS: Readonly<Record<string, string>> = {
  "1/8": "⅛",
  "1/4": "¼",
  "3/8": "⅜",
  "1/2": "½",
  "5/8": "⅝",
  "3/4": "¾",
  "7/8": "⅞",
};

/** Eighths as one sign, for the eye: 58⅜ in. */
export function eighths(text: string): string {
  return text.replace(/ ?\b([1-7]\/[248])\b/gu, (whole, part: string) => EIGHTHS[part] ?? whole);
}
