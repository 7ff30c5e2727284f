import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { taylor1909 } from "#ci/sources.js";
import { endsPerInch } from "../../units/index.js";
import { settForWeave } from "./sett-for-weave.js";

const plain = { ends: 2, intersections: 2 };

const toTwill = { ends: 4, intersections: 4, newEnds: 4, newIntersections: 2 };

const twillToTwill = { ends: 4, intersections: 2, newEnds: 10, newIntersections: 4 };

describe("another weave in the same yarn", () => {
  cited(
    "plain cloth of 103 as a 2/2 twill",
    published(taylor1909, "p. 464 of the copy", "137 1/3", "412/3"),
    settForWeave,
    [{ sett: endsPerInch(103), ...toTwill }],
    endsPerInch,
  );
  cited(
    "a 2/2 twill of 137 as a 5/2/1/2 twill",
    published(taylor1909, "p. 339, ch. XII", "146.8", "2055/14"),
    settForWeave,
    [{ sett: endsPerInch(137), ...twillToTwill }],
    endsPerInch,
  );
  it("is told over any number of repeats", () => {
    const sett = endsPerInch(103);
    const once = settForWeave({ sett, ...plain, newEnds: 4, newIntersections: 2 });
    expect(settForWeave({ sett, ...toTwill }).in(endsPerInch)).toBeCloseTo(once.in(endsPerInch), 12);
  });
});

describe("the limits of sett for weave", () => {
  limits(
    settForWeave,
    [
      "stays where the weave stays",
      { sett: endsPerInch(40), ends: 4, intersections: 2, newEnds: 4, newIntersections: 2 },
      40,
      endsPerInch,
    ],
    { sett: endsPerInch(0), ends: 0, intersections: 0, newEnds: 0, newIntersections: 0 },
  );
});
