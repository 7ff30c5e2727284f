import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { brooks1892 } from "#ci/sources.js";
import { ounces, percentAdded, pounds } from "../../units/index.js";
import { pieceMass } from "./piece-mass.js";

describe("a piece of cloth", () => {
  cited(
    "55 oz of warp with a quarter of size, 45 3/4 oz of weft",
    published(brooks1892, "ch. IX, weight of a piece", "7 lb 2 1/2 oz", "114.5"),
    pieceMass,
    [{ warp: ounces(55), size: percentAdded(25), weft: ounces("45.75") }],
    ounces,
  );
});

describe("the limits of piece mass", () => {
  limits(
    pieceMass,
    ["without size is warp and weft together", { warp: pounds(5), size: percentAdded(0), weft: pounds(3) }, 8, pounds],
    { warp: pounds(0), size: percentAdded(-1), weft: pounds(0) },
  );
});
