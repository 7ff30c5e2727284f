import { faultsText } from "../job/fault.js";
import type { Fault } from "../job/fault.js";
import { shownText } from "../text/clean.js";

/** The faults of a job file for a screen, under its name and their number. */
export function faultyJobText(path: string, faults: readonly Fault[]): string {
  const many = faults.length === 1 ? "1 fault" : `${String(faults.length)} faults`;
  return `${shownText(path)}: ${many}\n${faultsText(faults)}\n`;
}
