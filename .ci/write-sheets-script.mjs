// Writes packages/sheets/dist/thrum.script.js; the last step of the build of @thrum/sheets.
import { writeFileSync } from "node:fs";
import { root } from "./built.mjs";
import { scriptBundle } from "./sheets-script.mjs";

writeFileSync(`${root}packages/sheets/dist/thrum.script.js`, await scriptBundle());
