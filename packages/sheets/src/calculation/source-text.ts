import type { Source } from "@thrum/maths";

/** Where a rule comes from, as a note says it. */
export function sourceText({ author, title, year, place }: Source): string {
  return `Source: ${[author, title, year, place].filter(Boolean).join(", ")}`;
}
