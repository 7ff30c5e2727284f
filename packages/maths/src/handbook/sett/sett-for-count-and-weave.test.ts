import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { taylor1909 } from "#ci/sources.js";
import { cottonCount, endsPerInch } from "../../units/index.js";
import { settForCountAndWeave } from "./sett-for-count-and-weave.js";

const plain = { ends: 2, intersections: 2 };

const twillToTwill = { ends: 4, intersections: 2, newEnds: 10, newIntersections: 4 };

describe("another weave in the same yarn", () => {
  cited(
    "the weave alone, by the two rules together",
    published(taylor1909, "p. 339, ch. XII", "146.8", "2055/14"),
    settForCountAndWeave,
    [{ sett: endsPerInch(137), count: cottonCount(24), newCount: cottonCount(24), ...twillToTwill }],
    endsPerInch,
  );
  cited(
    "the count alone, by the two rules together",
    published(taylor1909, "pp. 341 and 342, ch. XII", "106.8", "106.8058987135073921241091076461564161208"),
    settForCountAndWeave,
    [
      {
        sett: endsPerInch(78),
        count: cottonCount(32),
        newCount: cottonCount(60),
        ...plain,
        newEnds: 2,
        newIntersections: 2,
      },
    ],
    endsPerInch,
  );
});

describe("the limits of sett for count and weave", () => {
  limits(
    settForCountAndWeave,
    [
      "stays where count and weave stay",
      {
        sett: endsPerInch(40),
        count: cottonCount(20),
        newCount: cottonCount(20),
        ends: 4,
        intersections: 2,
        newEnds: 4,
        newIntersections: 2,
      },
      40,
      endsPerInch,
    ],
    {
      sett: endsPerInch(0),
      count: cottonCount(0),
      newCount: cottonCount(0),
      ends: 0,
      intersections: 0,
      newEnds: 0,
      newIntersections: 0,
    },
  );
});
