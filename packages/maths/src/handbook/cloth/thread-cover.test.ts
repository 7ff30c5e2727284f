import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { fabricGeometry, gateTextile } from "#ci/sources.js";
import { millimetres, percentOf } from "../../units/index.js";
import { threadCover } from "./thread-cover.js";

describe("the cover of a cloth", () => {
  cited(
    "a flattened warp of 0.4 mm, 0.8 mm apart",
    published(gateTextile, "2011, Q45, working", "0.625 of the cloth", "62.5"),
    threadCover,
    [{ diameter: millimetres("0.4"), spacing: millimetres("0.8"), flattening: percentOf(80) }],
    percentOf,
  );
  cited(
    "a flattened weft of 0.6 mm, 1.2 mm apart",
    published(gateTextile, "2011, Q45, working", "0.625 of the cloth", "62.5"),
    threadCover,
    [{ diameter: millimetres("0.6"), spacing: millimetres("1.2"), flattening: percentOf(80) }],
    percentOf,
  );
  cited(
    "one thread of one tex cotton to the centimetre",
    published(
      fabricGeometry,
      "section 11.2",
      "n × √tex ÷ 266",
      "0.3740540515585688920257902093582481436",
      "the density of 0.91 stated beside it makes the constant 267.3, where 266 is printed",
    ),
    threadCover,
    [
      {
        diameter: millimetres("0.03740540515585688920257902093582481436"),
        spacing: millimetres(10),
        flattening: percentOf(100),
      },
    ],
    percentOf,
  );
});

describe("the limits of thread cover", () => {
  limits(
    threadCover,
    [
      "is the whole where round threads lie side by side",
      { diameter: millimetres("0.5"), spacing: millimetres("0.5"), flattening: percentOf(100) },
      100,
      percentOf,
    ],
    { diameter: millimetres(0), spacing: millimetres(0), flattening: percentOf(101) },
  );
});
