import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { blanco1917, brooks1892 } from "#ci/sources.js";
import { inches, picksPerInch, yards } from "../../units/index.js";
import { picksFromGlass } from "./picks-from-glass.js";

describe("picks", () => {
  cited(
    "11 1/2 under a glass of the two-hundredth of a yard",
    published(brooks1892, "p. 96 of the copy", "2300 to the yard", "575/9"),
    picksFromGlass,
    [{ counted: 11.5, glass: yards("0.005") }],
    picksPerInch,
  );
  for (const [threads, exact] of [
    [19, "76"],
    [22, "88"],
  ] as const) {
    cited(
      `${String(threads)} to the quarter inch`,
      published(blanco1917, "p. 50, a mark of 19 x 22", `${String(threads)} to the quarter inch`, exact),
      picksFromGlass,
      [{ counted: threads, glass: inches("0.25") }],
      picksPerInch,
    );
  }
});

describe("the limits of picks from glass", () => {
  limits(
    picksFromGlass,
    ["are the picks counted under a glass of one inch", { counted: 36, glass: inches(1) }, 36, picksPerInch],
    { counted: 0, glass: inches(0) },
  );
});
