import { sign } from "@thrum/maths";
import type { Length } from "@thrum/maths";
import * as enough from "../figures/enough.js";
import { job } from "../figures/keys.js";
import * as size from "../figures/size.js";
import * as warp from "../figures/warp.js";
import * as weft from "../figures/weft.js";
import * as yarn from "../figures/yarn.js";
import { money, numberDown, percent } from "./formats.js";
import { byTheYard, byTheYardDown } from "./length-formats.js";
import { byTheScaleDown } from "./mass-formats.js";
import { many, onlyWhere, pieceTitle, weighed, weighedDown, yarnName } from "./shown.js";
import { table } from "./table.js";
import { says, shown } from "./view.js";
import type { View } from "./view.js";
import { each, fromPart, optional, under, unsaid, where } from "./ways.js";

const isSome = (length: Length): boolean => sign(length) > 0;

/** What the run takes of each yarn, what is there, and what that allows. */
export const yarnPage: View = {
  name: "yarn",
  heading: "Yarn",
  blocks: [
    table(
      "yarn",
      { caption: "What the run takes" },
      ["yarn", yarnName],
      ["ends wound", yarn.wound],
      ["warp", shown(yarn.inWarp, byTheYard)],
      ["warp and weft", shown(yarn.inAll, byTheYard)],
      ["weight", weighed(yarn.mass)],
    ),
    table(
      "weft",
      { caption: "The weft" },
      ["woven into", pieceTitle],
      ["yarn", yarnName],
      ["for one", shown(weft.withAllowance, byTheYard)],
      ["for all", shown(weft.length, byTheYard)],
    ),
    optional(says`The weft has ${shown(job.weft.allowance, percent)} added.`),
    where(
      job.weft.stripes,
      () => true,
      unsaid(job.weft.allowance, says`The weft has no allowance: joins and the ends of bobbins are not reckoned.`),
    ),
    table(
      "yarn",
      { caption: "What is there, and what to buy" },
      ["yarn", yarnName],
      ["on hand", weighedDown(yarn.there)],
      ["short by", weighed(yarn.missing)],
      ["to buy", yarn.packages],
      ["packages of", weighedDown(yarn.packageMass)],
      ["left over", weighedDown(yarn.spare)],
    ),
    optional(
      table(
        "size",
        { caption: "Sold in several sizes" },
        ["yarn", yarnName],
        ["one package", shown(size.mass, (mass, units) => byTheScaleDown(mass, units))],
        ["price", shown(size.price, money)],
        ["of this size alone", size.alone],
        ["in the cheapest mixture", size.inMixture],
      ),
      each(
        "yarn",
        where(
          yarn.sizesSold,
          (sold) => sold === "several",
          says`${yarnName}: of the largest size alone ${many(yarn.packages, "package")} for ${shown(yarn.costOfLargest, money)}, ${weighedDown(yarn.spare)} left over; the cheapest mixture costs ${shown(yarn.costOfMixture, money)}, ${weighedDown(yarn.spareOfMixture)} left over.`,
        ),
      ),
    ),
    optional(
      under(
        "What is on hand allows",
        table(
          "yarn",
          { caption: "At this length, and with these stripes" },
          ["yarn", yarnName],
          ["on hand", shown(yarn.lengthThere, byTheYardDown)],
          ["ends it is enough for", yarn.endsEnough],
          ["longest warp", shown(yarn.longest, byTheYardDown)],
          ["pieces", onlyWhere(yarn.more, isSome, shown(yarn.allowed, numberDown))],
        ),
        each(
          "yarn",
          where(
            yarn.lengthThere,
            isSome,
            where(
              yarn.leaves,
              (left) => left === "none",
              says`${yarnName}: enough for none, for its weft alone takes all that is on hand.`,
            ),
          ),
        ),
        where(
          warp.more,
          isSome,
          fromPart(enough.runsOut, (first) => [
            { is: "says", as: "fact", says: ["The yarn that runs out first is ", { yarn: first.yarn }, "."] },
          ]),
        ),
      ),
    ),
    says`What is needed is rounded up, what is there or left over is rounded down.`,
  ],
};
