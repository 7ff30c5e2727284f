import type { WorkRecord } from "../keep/records.js";

const LATE = 10 * 60_000;

/** Whether she has been away so long that she looks at the loom first. */
export function isLate({ at, seq }: WorkRecord, now: number): boolean {
  return seq > 0 && at > 0 && now - at > LATE;
}

/** "Sunday at 14:32" within a week, else the date. */
export function whenText(at: number, now: number, locale: string): string {
  const day = 86_400_000;
  const options: Intl.DateTimeFormatOptions =
    now - at < 6 * day ? { weekday: "long" } : { day: "numeric", month: "long" };
  const date = new Intl.DateTimeFormat(locale, options).format(at);
  const time = new Intl.DateTimeFormat(locale, { hour: "2-digit", minute: "2-digit", hour12: false }).format(at);
  return `${date} at ${time}`;
}
