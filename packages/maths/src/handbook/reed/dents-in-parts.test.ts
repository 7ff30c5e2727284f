import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { oddWeavings } from "#ci/sources.js";
import { dentsInParts } from "./dents-in-parts.js";

describe("dents of a reed marked in parts", () => {
  cited("thirteen score", published(oddWeavings, "old wooden reeds", "260", "260"), dentsInParts, [
    { parts: 13, dentsInPart: 20 },
  ]);
  cited("26 parts of 30", published(oddWeavings, "old wooden reeds", "780", "780"), dentsInParts, [
    { parts: 26, dentsInPart: 30 },
  ]);
});

describe("the limits of dents in parts", () => {
  limits(dentsInParts, ["of one dent is one", { parts: 1, dentsInPart: 1 }, 1], { parts: 0, dentsInPart: 0 });
});
