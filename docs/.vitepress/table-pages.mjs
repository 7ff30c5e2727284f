// The long tables, which nobody reads but on the site: every published case, and every formula turned round.
import { writeFileSync } from "node:fs";
import { root } from "./pages/handbook.mjs";
import { verificationTable } from "./pages/trust-pages.mjs";
import { turnedRound } from "./pages/turned-round.mjs";

export function writeTables() {
  writeFileSync(`${root}docs/verification.md`, `${verificationTable()}\n`);
  writeFileSync(`${root}docs/turned-round.md`, `${turnedRound()}\n`);
}
