import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { brooks1892 } from "#ci/sources.js";
import { endsPerInch, heddlesPerInch, stockportHeald } from "../../units/index.js";
import { healdClosenessOfShaft } from "./heald-closeness-of-shaft.js";

describe("closeness of the heddles on one shaft of an uneven draft", () => {
  const brooksDraft = [1, 2, 3, 4, 2];
  for (const [at, heddlesInRepeat] of brooksDraft.entries()) {
    const shaft = `shaft ${String(at + 1)} of Brooks's draft`;
    const input = { sett: endsPerInch(60), heddlesInRepeat, endsInRepeat: 12 };
    const perInch = String(5 * heddlesInRepeat);
    cited(
      shaft,
      published(brooks1892, "p. 93 of the copy", perInch, perInch),
      healdClosenessOfShaft,
      [input],
      heddlesPerInch,
    );
    const number = String(20 * heddlesInRepeat);
    cited(
      `${shaft} as a Stockport number`,
      published(brooks1892, "p. 93 of the copy", number, number),
      healdClosenessOfShaft,
      [input],
      stockportHeald,
    );
  }
});

describe("the limits of heald closeness of shaft", () => {
  limits(
    healdClosenessOfShaft,
    [
      "is the sett where one shaft carries every end",
      { sett: endsPerInch(24), heddlesInRepeat: 4, endsInRepeat: 4 },
      24,
      heddlesPerInch,
    ],
    { sett: endsPerInch(0), heddlesInRepeat: 0, endsInRepeat: 0 },
  );
});
