import { planHtml, planWarp, readJob } from "@thrum/plan";
import { workbookOf } from "@thrum/sheets";

function planned(text: string): ReturnType<typeof planWarp> {
  const reading = readJob(text);
  if (!reading.ok) throw new RangeError("a job that does not read has no sheets");
  return planWarp(reading.value);
}

export const sheetsOf = (text: string): string => planHtml(planned(text));

export const workbook = (text: string): Uint8Array => workbookOf(planned(text));
