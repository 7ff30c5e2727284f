import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { taylor1909 } from "#ci/sources.js";
import { cottonCount, endsPerInch } from "../../units/index.js";
import { countForSett } from "./count-for-sett.js";

describe("another count in the same cloth", () => {
  cited(
    "the count for 55 to the inch, from 78 of 32s",
    published(taylor1909, "p. 341, ch. XII", "15.91", "24200/1521"),
    countForSett,
    [{ count: cottonCount(32), sett: endsPerInch(78), newSett: endsPerInch(55) }],
    cottonCount,
  );
});

describe("the limits of count for sett", () => {
  limits(
    countForSett,
    [
      "is the count unchanged for an unchanged sett",
      { count: cottonCount(20), sett: endsPerInch(40), newSett: endsPerInch(40) },
      20,
      cottonCount,
    ],
    { count: cottonCount(0), sett: endsPerInch(0), newSett: endsPerInch(0) },
  );
});
