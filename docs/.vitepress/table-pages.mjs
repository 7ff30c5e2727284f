// The long tables, which nobody reads but on the site: every published case, and every formula turned round.
import { writeFileSync } from "node:fs";
import { root } from "../../.ci/built.mjs";
import { verificationTable } from "../../.ci/docs/trust-pages.mjs";
import { turnedRound } from "../../.ci/docs/turned-round.mjs";

export function writeTables() {
  writeFileSync(`${root}docs/verification.md`, `${verificationTable()}\n`);
  writeFileSync(`${root}docs/turned-round.md`, `${turnedRound()}\n`);
}
