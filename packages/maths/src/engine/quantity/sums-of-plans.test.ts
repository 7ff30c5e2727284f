import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { allenNapery, horton, rogueWeaver2025, sammons, zaldoGrace2019 } from "../../sources/index.js";
import { inches, yards } from "../../units/index.js";
import { sum, times } from "./index.js";

describe("the sums of a plan", () => {
  const parts = (...amounts: number[]): [ReturnType<typeof inches>, ...ReturnType<typeof inches>[]] =>
    amounts.map((amount) => inches(amount)) as never;
  const whole = "whole post";
  cited("a wool warp in its parts", published(rogueWeaver2025, whole, "92", "92"), sum, parts(7, 75, 10), inches);
  cited("a cotton warp in its parts", published(rogueWeaver2025, whole, "105", "105"), sum, parts(9, 84, 12), inches);
  const twice = "misprint: the fringe between the mats stands in the woven length and in the waste";
  cited("mats, take-up and waste", published(horton, "preview", "60", "63", twice), sum, parts(34, 3, 26), inches);
  cited(
    "yarn of colour A, warp and weft",
    published(sammons, "plan", "425", "425"),
    sum,
    [yards(250), yards(175)],
    yards,
  );
  cited(
    "yarn of colour B, warp and weft",
    published(sammons, "plan", "150", "150"),
    sum,
    [yards(90), yards(60)],
    yards,
  );
  const colours: Parameters<typeof sum> = [yards("236.8"), yards("954.6"), yards("954.6")];
  cited("yarn used in three colours", published(zaldoGrace2019, "project page", "2146", "2146"), sum, colours, yards);
  cited("main weft of six napkins", published(allenNapery, "plan", "600", "600"), times, [yards(100), 6], yards);
  cited("contrast weft of six napkins", published(allenNapery, "plan", "78", "78"), times, [yards(13), 6], yards);
});
