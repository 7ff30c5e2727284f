// Writes packages/sheets/dist/thrum.script.js; the last step of the build of @thrum/sheets.
import { writeFileSync } from "node:fs";
import { root } from "../support/built.mjs";
import { scriptBundle } from "../support/sheets-script.mjs";

writeFileSync(`${root}packages/sheets/dist/thrum.script.js`, await scriptBundle());
