import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import {
  allenLogCabinNapery,
  brooks1892,
  hortonPlacemats,
  patrickFriendship,
  rogueWeaver2025,
  sammonsGather,
  weftHanded2010,
  wheeler1908,
  zaldograce2019,
} from "#ci/sources.js";
import { feet, inches, ounces, yards } from "../../units/index.js";
import { difference, inUnit, sum, times } from "./index.js";

describe("the sums of a plan", () => {
  const parts = (...amounts: number[]): [ReturnType<typeof inches>, ...ReturnType<typeof inches>[]] =>
    amounts.map((amount) => inches(amount)) as never;
  const whole = "whole post";
  cited("a wool warp in parts", published(rogueWeaver2025, whole, "92", "92"), sum, parts(7, 75, 10), inches);
  cited("a cotton warp in parts", published(rogueWeaver2025, whole, "105", "105"), sum, parts(9, 84, 12), inches);
  const twice = "misprint: the fringe between the mats stands in the woven length and in the waste";
  cited(
    "mats, take-up and waste",
    published(hortonPlacemats, "preview", "60", "63", twice),
    sum,
    parts(34, 3, 26),
    inches,
  );
  cited(
    "yarn of colour A, warp and weft",
    published(sammonsGather, "plan", "425", "425"),
    sum,
    [yards(250), yards(175)],
    yards,
  );
  cited(
    "yarn of colour B, warp and weft",
    published(sammonsGather, "plan", "150", "150"),
    sum,
    [yards(90), yards(60)],
    yards,
  );
  const colours: Parameters<typeof sum> = [yards("236.8"), yards("954.6"), yards("954.6")];
  cited("yarn used in three colours", published(zaldograce2019, "project page", "2146", "2146"), sum, colours, yards);
  cited(
    "main weft of six napkins",
    published(allenLogCabinNapery, "plan", "600", "600"),
    times,
    [yards(100), 6],
    yards,
  );
  cited(
    "contrast weft of six napkins",
    published(allenLogCabinNapery, "plan", "78", "78"),
    times,
    [yards(13), 6],
    yards,
  );
  const loose = "loosely put: four inches under";
  cited(
    "what four pieces of 43 in leave of 5 2/3 yd",
    published(patrickFriendship, "plan", "just under 36", "32", loose),
    difference,
    [inches(204), inches(172)],
    inches,
  );
  cited(
    "all the yarn of two cloaks",
    published(weftHanded2010, "14 April 2010", "27000", "27000"),
    inUnit,
    [yards(9000), feet],
    feet,
  );
  cited(
    "warp, size and weft of a piece",
    published(brooks1892, "ch. IX, weight of a piece", "7 lb 2 1/2 oz", "114.5"),
    sum,
    [ounces(55), ounces("13.75"), ounces("45.75")],
    ounces,
  );
  const at = "p. 39";
  cited("a rug strip with two borders", published(wheeler1908, at, "5", "5"), sum, [feet(3), feet(1), feet(1)], feet);
  cited(
    "two rug strips with two borders",
    published(wheeler1908, at, "8", "8"),
    sum,
    [feet(3), feet(3), feet(1), feet(1)],
    feet,
  );
});
