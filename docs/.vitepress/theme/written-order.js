/** More text than any order needs; a link may bring more. */
export const MOST_CHARACTERS = 2000;
/** Every end is drawn: more would hold the page up for minutes. */
export const MOST_ENDS = 5000;

/** The order a link asks for; null where it asks for none. */
export function orderIn(query) {
  return new URLSearchParams(query).get("order")?.slice(0, MOST_CHARACTERS) ?? null;
}

/** The names of a written order, in the order they appear. */
export function namesIn(text) {
  const words = text
    .slice(0, MOST_CHARACTERS)
    .split("=")[0]
    .split(/[,;[\]]/u);
  const found = words
    .map((word) => /^\s*\d+\s+(\S.*?)\s*$/u.exec(word)?.[1])
    .filter((name) => name !== undefined && !/^(times|x|×)$/u.test(name));
  return [...new Set(found)];
}
