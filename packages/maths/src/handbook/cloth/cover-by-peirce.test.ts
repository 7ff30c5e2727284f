import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { gateTextile } from "#ci/sources.js";
import { cottonCount, endsPerCentimetre, endsPerInch, percentOf, picksPerCentimetre } from "../../units/index.js";
import { coverByPeirce } from "./cover-by-peirce.js";

describe("the cover of a cloth", () => {
  cited(
    "35 ends of 30s to the centimetre",
    published(gateTextile, "2003, Q75, working", "0.58 of the cloth", "57.96730400263008034086263534641822584333"),
    coverByPeirce,
    [{ threads: endsPerCentimetre(35), count: cottonCount(30) }],
    percentOf,
  );
  cited(
    "30 picks of 35s to the centimetre",
    published(
      gateTextile,
      "2003, Q75, working",
      "0.54 of the cloth",
      "46.00053872165211657588065467520359378462",
      "misprint: it multiplies by 35 where 30 picks are given",
    ),
    coverByPeirce,
    [{ threads: picksPerCentimetre(30), count: cottonCount(35) }],
    percentOf,
  );
});

describe("the limits of cover by peirce", () => {
  limits(
    coverByPeirce,
    [
      "is the whole cloth at 28 threads of ones cotton",
      { threads: endsPerInch(28), count: cottonCount(1) },
      100,
      percentOf,
    ],
    { threads: endsPerInch(0), count: cottonCount(0) },
  );
});
