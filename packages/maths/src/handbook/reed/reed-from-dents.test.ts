import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { bergdala, brinton1919, oddWeavings } from "#ci/sources.js";
import { centimetres, dentsPerInch, dentsPerTenCentimetres, inches } from "../../units/index.js";
import { reedFromDents } from "./reed-from-dents.js";

describe("the number of a reed from dents counted", () => {
  cited(
    "1296 dents on 104 cm",
    published(oddWeavings, "old wooden reeds", "125", "1620/13"),
    reedFromDents,
    [{ dents: 1296, length: centimetres(104) }],
    dentsPerTenCentimetres,
  );
  cited(
    "120 dents on 15 cm",
    published(bergdala, "p. 6 of the book", "80", "80"),
    reedFromDents,
    [{ dents: 120, length: centimetres(15) }],
    dentsPerTenCentimetres,
  );
  cited(
    "120 dents on 15 cm, to the inch",
    published(bergdala, "sizes of reeds", "20", "20.32"),
    reedFromDents,
    [{ dents: 120, length: centimetres(15) }],
    dentsPerInch,
  );
  cited(
    "544 dents of ingrain carpet on 36 inches",
    published(brinton1919, "ingrain chapter", "15", "136/9"),
    reedFromDents,
    [{ dents: 544, length: inches(36) }],
    dentsPerInch,
  );
  cited(
    "189 bobbins on three quarters of a yard",
    published(brinton1919, "spool Axminster chapter", "7", "7"),
    reedFromDents,
    [{ dents: 189, length: inches(27) }],
    dentsPerInch,
  );
});

describe("the limits of reed from dents", () => {
  limits(reedFromDents, ["is the dents themselves over one inch", { dents: 12, length: inches(1) }, 12, dentsPerInch], {
    dents: 0,
    length: inches(0),
  });
});
