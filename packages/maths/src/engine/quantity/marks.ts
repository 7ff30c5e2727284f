import { refuse } from "../refusal.js";
import { described } from "./described.js";

/** The decimal and grouping marks of a locale; without one only a point is a decimal mark and nothing groups. */
export interface NumeralMarks {
  readonly decimal: string;
  readonly group: string | null;
}

const LONGEST = 40;

/** Whether the locale is one whose marks are known here: any other would be read by those of the machine. */
function isLocale(locale: unknown): boolean {
  try {
    return (
      typeof locale === "string" &&
      locale.length <= LONGEST &&
      Intl.NumberFormat.supportedLocalesOf(locale).length === 1
    );
  } catch {
    return false;
  }
}

export function marksOf(locale: string | null): NumeralMarks {
  if (locale === null) return { decimal: ".", group: null };
  if (!isLocale(locale)) {
    refuse(
      "unreadable",
      ["locale"],
      'a locale that is known here, such as "de" or "en-GB"',
      described(locale),
      "It says which marks stand for decimals and thousands.",
    );
  }
  const parts = new Intl.NumberFormat(locale, { numberingSystem: "latn" }).formatToParts(1234567.5);
  const mark = (type: string): string | undefined => parts.find((part) => part.type === type)?.value;
  return { decimal: mark("decimal") ?? ".", group: mark("group") ?? null };
}

/** Plain digits with the marks of a locale: 1234.5 is 1.234,5 in one, 1,234.5 in another. */
export function withMarks(digits: string, locale: string | null): string {
  if (locale === null) return digits;
  const { decimal, group } = marksOf(locale);
  const [whole = "", part] = digits.split(".");
  const grouped = group === null ? whole : whole.replace(/\B(?=(?:\d{3})+$)/gu, group);
  return part === undefined ? grouped : `${grouped}${decimal}${part}`;
}
