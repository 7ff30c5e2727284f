import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { clothQuantities, jablonskiTakeUp } from "#ci/sources.js";
import { inUnit, ratio } from "../../engine/quantity/index.js";
import { cottonHanks, inches, yards } from "../../units/index.js";

describe("crimp on the cloth and take-up on the thread", () => {
  cited(
    "ten inches woven over 8 1/2 off the loom",
    published(jablonskiTakeUp, "whole example", "1.176", "20/17"),
    ratio,
    [inches(10), inches("8.5")],
    null,
  );
  cited(
    "3240 ends of 42 yards in hanks",
    published(clothQuantities, "example", "162", "162"),
    inUnit,
    [yards(136080), cottonHanks],
    cottonHanks,
  );
});
