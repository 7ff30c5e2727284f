/** The marks and words of an amount as people write it. */
export type Token =
  | { readonly kind: "digits"; readonly text: string; readonly spaced: boolean }
  | { readonly kind: "vulgar"; readonly over: number; readonly under: number; readonly spaced: boolean }
  | { readonly kind: "slash" | "hyphen"; readonly text: string; readonly spaced: boolean }
  | { readonly kind: "word"; readonly text: string; readonly spaced: boolean };

const VULGAR: Readonly<Record<string, readonly [number, number]>> = {
  "½": [1, 2],
  "⅓": [1, 3],
  "⅔": [2, 3],
  "¼": [1, 4],
  "¾": [3, 4],
  "⅕": [1, 5],
  "⅖": [2, 5],
  "⅗": [3, 5],
  "⅘": [4, 5],
  "⅙": [1, 6],
  "⅚": [5, 6],
  "⅛": [1, 8],
  "⅜": [3, 8],
  "⅝": [5, 8],
  "⅞": [7, 8],
};

const TOKEN =
  /(\d{1,3}(?:[\u00a0\u2009\u202f]\d{3})+(?!\d)(?:[.,]\d+)?|\d[\d.,]*|[.,]\d+)|([½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞])|([/⁄])|([-−–])|(\p{L}+\.?|['’′]{2}|["”″]|['’′])/uy;
const SPACE = /[ \t\u00a0\u2000-\u200a\u202f]*/uy;

/** Splits text into marks, each told whether a space stood before it; null when something else stands in it. */
export function tokensOf(text: string): readonly Token[] | null {
  const tokens: Token[] = [];
  let at = 0;
  while (at < text.length) {
    SPACE.lastIndex = at;
    const gap = SPACE.exec(text)?.[0].length ?? 0;
    at += gap;
    if (at === text.length) break;
    TOKEN.lastIndex = at;
    const found = TOKEN.exec(text);
    if (found === null) return null;
    const [whole, digits, vulgar, slash, hyphen] = found;
    const spaced = gap > 0;
    const [over, under] = VULGAR[vulgar ?? ""] ?? [0, 0];
    if (digits !== undefined) tokens.push({ kind: "digits", text: digits, spaced });
    else if (vulgar !== undefined) tokens.push({ kind: "vulgar", over, under, spaced });
    else if (slash !== undefined) tokens.push({ kind: "slash", text: slash, spaced });
    else if (hyphen !== undefined) tokens.push({ kind: "hyphen", text: hyphen, spaced });
    else tokens.push({ kind: "word", text: whole.replace(/\.$/u, ""), spaced });
    at += whole.length;
  }
  return tokens;
}
