import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { gateTextile, taylor1909 } from "#ci/sources.js";
import { averageFloat } from "./average-float.js";

describe("the quantities of a weave", () => {
  cited(
    "average float of the 2/2 twill",
    published(gateTextile, "2006, Q66", "2", "2"),
    averageFloat,
    [{ threads: 4, intersections: 2 }],
    null,
  );
  cited(
    "average float of plain weave, which intersects every pick",
    published(taylor1909, "p. 428 of the copy", "1", "1"),
    averageFloat,
    [{ threads: 2, intersections: 2 }],
    null,
  );
  cited(
    "average float of a 2/2 twill, which intersects at half the picks",
    published(taylor1909, "p. 428 of the copy", "half the picks", "2"),
    averageFloat,
    [{ threads: 4, intersections: 2 }],
    null,
  );

  it("is refused where a thread never crosses, for it would float for ever", () => {
    expect(() => averageFloat({ threads: 4, intersections: 0 })).toThrow("intersections");
  });
});
