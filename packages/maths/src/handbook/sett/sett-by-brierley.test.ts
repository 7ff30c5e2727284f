import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { gateTextile } from "#ci/sources.js";
import { cottonCount, endsPerInch } from "../../units/index.js";
import { settByBrierley } from "./sett-by-brierley.js";

const cottonOneInTex = 32399455 / 54864;

describe("the closest sett", () => {
  cited(
    "60 tex cotton in 2/2 twill",
    published(
      gateTextile,
      "2006, Q66, working",
      "58.11",
      "58.13881685815366812545599485623412147247",
      "the root is rounded on the way; K stands under it with the count",
    ),
    settByBrierley,
    [{ floatFactor: 1.3103934038583633, constant: 200, system: cottonCount, count: cottonCount(cottonOneInTex / 60) }],
    endsPerInch,
  );
  cited(
    "60 tex cotton in 2/2 twill, by the examiners' key",
    published(
      gateTextile,
      "2006, Q66, key",
      "230 to the decimetre",
      "58.13881685815366812545599485623412147247",
      "misprint: 58.14 to the inch is 228.9 to the decimetre; the key rounds that of 58",
    ),
    settByBrierley,
    [{ floatFactor: 1.3103934038583633, constant: 200, system: cottonCount, count: cottonCount(cottonOneInTex / 60) }],
    endsPerInch,
  );
});

describe("the limits of sett by brierley", () => {
  limits(
    settByBrierley,
    [
      "is the root of the constant for ones and a float of 1",
      { floatFactor: 1, constant: 196, system: cottonCount, count: cottonCount(1) },
      14,
      endsPerInch,
    ],
    { floatFactor: 0, constant: 0, count: cottonCount(0) },
  );
});
