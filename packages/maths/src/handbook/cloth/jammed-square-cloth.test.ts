import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { balasubramanianCloth, cdquestionsJam2025, gateTextile } from "#ci/sources.js";
import { endsPerCentimetre, endsPerInch, millimetres, percentAdded } from "../../units/index.js";
import { jammedSquareCloth } from "./jammed-square-cloth.js";

describe("a square cloth of round threads, jammed", () => {
  const sections = "Jammed Structures, Square cloth";
  const half = { diameter: millimetres("0.5") };
  cited(
    "angle of the threads of a jammed square cloth",
    published(balasubramanianCloth, sections, "60", "60"),
    jammedSquareCloth,
    [half],
    "thread.angle",
  );
  cited(
    "thread from crossing to crossing, for both diameters of one",
    published(balasubramanianCloth, sections, "1.0472", "1.047197551196597746154214461093167628066"),
    jammedSquareCloth,
    [half],
    ["thread.length", millimetres],
  );
  cited(
    "spacing of a jammed square cloth, for both diameters of one",
    published(balasubramanianCloth, sections, "0.866", "0.8660254037844386467637231707529361834714"),
    jammedSquareCloth,
    [half],
    ["spacing", millimetres],
  );
  cited(
    "crimp of a jammed square cloth, for both diameters of one",
    published(balasubramanianCloth, sections, "0.2092 of the cloth", "20.91995761561452337293855050947704881894"),
    jammedSquareCloth,
    [half],
    ["thread.crimp", percentAdded],
  );
  cited(
    "crimp at the most threads of 0.5 mm",
    published(gateTextile, "2009, Q54", "21", "20.91995761561452337293855050947704881894"),
    jammedSquareCloth,
    [half],
    ["thread.crimp", percentAdded],
  );
  cited(
    "picks of a cloth half a millimetre thick",
    published(gateTextile, "2013, Q41", "23", "23.0940107675850305803659512200782982259"),
    jammedSquareCloth,
    [{ diameter: millimetres("0.25") }],
    ["ends", endsPerCentimetre],
  );
  cited(
    "threads of 10s cotton to the inch",
    published(cdquestionsJam2025, "whole question", "51", "51.01684620070283459169120513182115362853"),
    jammedSquareCloth,
    [{ diameter: millimetres("0.2874481260508507468701000822550357136176") }],
    ["ends", endsPerInch],
  );
});
