// Figures promised about numbers and speed. A number that is not exact fails the run, and so does a ratio of times beside a
// peer, the median of several in one run, past its budget by more than a fifth. Times alone are only told: machines differ.
import { figures as checking } from "./checking.mjs";
import { figures as columns } from "./columns.mjs";
import { figures as commanding } from "./command.mjs";
import { figures as conversion } from "./conversion.mjs";
import { figures as exactness } from "./exactness.mjs";
import { figures as importing } from "./import.mjs";
import { figures as planning } from "./plan.mjs";
import { figures as stripes } from "./stripes.mjs";
import { figures as types } from "./types.mjs";
import { printTable } from "./table.mjs";

const rows = [];
for (const figures of [exactness, conversion, columns, planning, checking, stripes, importing, commanding, types])
  rows.push(...(await figures()));
process.exitCode = printTable(rows);
