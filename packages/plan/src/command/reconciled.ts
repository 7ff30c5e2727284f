import { QuantityError } from "@thrum/maths";
import { faultsText, readFigures, reconcile } from "../index.js";
import { shownText } from "../text/clean.js";
import type { World } from "./world.js";

/** Whether the figures of a printed page agree, in sentences; false where they could not be read. */
export function reconciled(path: string, world: World): boolean {
  const reading = readFigures(world.read(path));
  if (!reading.ok) {
    world.complain(`${shownText(path)}:\n${faultsText(reading.faults)}\n`);
    return false;
  }
  try {
    world.print(`${reconcile(reading.value).says.join("\n")}\n`);
    return true;
  } catch (error) {
    if (!(error instanceof QuantityError)) throw error;
    world.complain(`${shownText(path)}: ${error.message}\n`);
    return false;
  }
}
