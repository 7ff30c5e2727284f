import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { gateTextile } from "#ci/sources.js";
import { centimetres, cubicCentimetresPerGram, gramsPerSquareMetre, millimetres } from "../../units/index.js";
import { specificVolume } from "./specific-volume.js";

describe("a piece of cloth", () => {
  cited(
    "room in a gram of a shirting",
    published(gateTextile, "2010, Q51", "3.62", "3.620405924300603400987383433900164563906"),
    specificVolume,
    [{ thickness: centimetres("0.033"), massPerArea: gramsPerSquareMetre("91.15") }],
    cubicCentimetresPerGram,
  );
});

describe("the limits of specific volume", () => {
  limits(
    specificVolume,
    [
      "of half a millimetre that weighs 500 g to the square metre is 1",
      { thickness: millimetres("0.5"), massPerArea: gramsPerSquareMetre(500) },
      1,
      cubicCentimetresPerGram,
    ],
    { thickness: millimetres(0), massPerArea: gramsPerSquareMetre(0) },
  );
});
