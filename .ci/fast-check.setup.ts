// THRUM_RUNS=10000 npm test : more examples of every property than the usual hundred.
import { configureGlobal, readConfigureGlobal } from "fast-check";

const runs = process.env["THRUM_RUNS"];
if (runs !== undefined) {
  const numRuns = Number(runs);
  if (!Number.isSafeInteger(numRuns) || numRuns < 1)
    throw new Error(`THRUM_RUNS: expected a whole number, received ${runs}`);
  configureGlobal({ ...readConfigureGlobal(), numRuns });
}
