import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { taylor1909 } from "#ci/sources.js";
import { intersectionsAmong } from "./intersections-among.js";

describe("the quantities of a weave", () => {
  cited(
    "picks of plain weave at which one end intersects",
    published(taylor1909, "p. 428 of the copy", "1", "1"),
    intersectionsAmong,
    [{ threads: 1, intersections: 2, threadsInRepeat: 2 }],
    null,
  );
  cited(
    "intersections of a 5/2/1/2 twill in 40 ends",
    published(taylor1909, "p. 464 of the copy", "16", "16"),
    intersectionsAmong,
    [{ threads: 40, intersections: 4, threadsInRepeat: 10 }],
    null,
  );
  cited(
    "intersections to the inch of a satin of five, 180 picks",
    published(taylor1909, "p. 427 of the copy", "72", "72"),
    intersectionsAmong,
    [{ threads: 180, intersections: 2, threadsInRepeat: 5 }],
    null,
  );
});

describe("the limits of intersections among", () => {
  limits(
    intersectionsAmong,
    ["one repeat are the intersections of the repeat", { threads: 4, intersections: 2, threadsInRepeat: 4 }, 2],
    { threads: 0, intersections: 0, threadsInRepeat: 0 },
  );
});
