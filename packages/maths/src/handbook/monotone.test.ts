import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { calculations, unitOf, validFor, validInput } from "#ci/inputs.js";
import type { Quantity } from "../engine/quantity/index.js";
import { QuantityError } from "../engine/refusal.js";

/** More of the input never gives less of the answer, or never more of it. */
const rows: readonly (readonly [calculation: string, more: readonly string[], less: readonly string[]])[] = [
  ["warpLength", ["pieces", "finishedLength", "hemEachEnd", "loomToFinished", "takeUp", "loomWaste"], []],
  ["warpLengthByAdding", ["pieces", "finishedLength", "loomWaste"], []],
  ["warpLengthForSizes", ["sample", "loomToFinished", "takeUp", "loomWaste"], []],
  ["endsForWidth", ["sett", "widthInReed"], []],
  ["endsInWidth", ["sett", "width"], []],
  ["settFromEnds", ["ends"], ["width"]],
  ["endsInGroups", ["groups", "endsPerGroup"], []],
  ["reedWidth", ["ends"], ["sett"]],
  ["finishedWidth", ["widthInReed"], ["reedToFinished"]],
  ["finishedWidthFromEnds", ["ends"], ["sett"]],
  ["widthInReedFromFinished", ["finishedWidth", "reedToFinished"], []],
  ["settAtLoom", ["settFinished"], ["reedToFinished"]],
  ["settFinished", ["settAtLoom", "reedToFinished"], []],
  ["settInReed", ["reed", "endsPerDent"], []],
  ["dentsForEnds", ["ends"], ["endsPerDent"]],
  ["dentsInReed", ["reed", "reedLength"], []],
  ["spaceInDent", ["open"], ["reed"]],
  ["knotClearance", ["space"], ["oldDiameter", "newDiameter"]],
  ["oldWarpToKeep", ["pastReed", "reedToHeddles", "behindHeddles"], []],
  ["hoursToJoin", ["knots"], ["knotsPerHour"]],
  ["yarnForEnds", ["ends", "warpLength"], []],
  ["longestWarp", ["yarn"], ["ends"]],
  ["endsFromYarn", ["yarn"], ["warpLength"]],
  ["packagesToBuy", ["needed"], ["packageMass"]],
  ["yarnMass", ["length"], ["count"]],
  ["yarnMassDirect", ["length", "count"], []],
  ["yarnLength", ["mass", "count"], []],
  ["yarnLengthDirect", ["mass"], ["count"]],
  ["invoiceMass", ["mass", "regain"], ["content"]],
  ["regainFromContent", ["content"], []],
  ["contentFromRegain", ["regain"], []],
  ["takeUpFromCrimp", ["crimp"], []],
  ["crimpFromTakeUp", ["takeUp"], []],
  ["lossFromMeasures", ["before"], ["after"]],
  ["combinedLoss", ["first", "second"], []],
  ["threadForCloth", ["clothLength", "crimp"], []],
  ["clothFromThread", ["threadLength"], ["crimp"]],
  ["turnsForLength", ["warpLength"], ["measuredTurn"]],
  ["sectionsInWarp", ["ends"], ["endsPerSection"]],
  ["settByDiameter", ["count", "constant"], ["intersections"]],
  ["yarnCost", ["yarn", "price"], ["priceMass"]],
  ["yarnCostByLength", ["yarn", "price"], ["packageLength"]],
  ["workCost", ["hours", "hourlyRate"], []],
  ["costByEnds", ["ends", "charge"], ["endsCharged"]],
  ["countFromWrappingDirect", ["mass"], ["length"]],
  ["costByPicks", ["picks", "charge"], ["picksCharged"]],
  ["costByPieces", ["pieces", "charge"], []],
  ["hoursToWeave", ["picks", "timeLost"], ["picksPerMinute"]],
  ["massPerAreaOfPiece", ["mass"], ["length", "width"]],
  ["stripLength", ["clothLength", "clothWidth"], ["stripWidth"]],
  ["settOfSquareCloth", ["massPerArea", "count"], ["crimp"]],
  ["regainFromMasses", ["mass"], ["dryMass"]],
  ["contentFromMasses", ["mass"], ["dryMass"]],
  ["combinedAddition", ["first", "second"], []],
  ["picksForWeight", ["picks", "mass"], ["newMass"]],
  ["massForSett", ["mass", "newSett"], ["sett"]],
  ["massForCount", ["mass", "count"], ["newCount"]],
  ["packsToBuy", ["packages"], ["packagesPerPack"]],
  ["costOverLength", ["cost", "length"], ["warpLength"]],
  ["priceFloor", ["cost", "commission"], []],
  ["fibreShareByDryMass", ["fibre"], []],
  ["fibreShareByConditionedMass", ["fibre", "regain"], []],
  ["hemAtLoom", ["hemEachEnd", "loomToFinished"], []],
  ["twistedFringe", ["fringeEachEnd"], ["twist"]],
  ["lengthWithFringe", ["finishedLength", "fringeEachEnd"], []],
  ["lengthLeft", ["length"], ["taken"]],
  ["endsInAll", ["ends", "beside"], []],
  ["warpOfWoven", ["woven", "takeUp", "fringes"], []],
  ["warpForOrder", ["woven", "takeUp", "fringes", "loomWaste"], []],
  ["piecesOfOrder", ["warpLength"], ["loomWaste", "takeUp", "wovenLength", "fringeEachEnd"]],
  ["lengthInSteps", ["needed"], []],
  ["endsUpTo", ["length", "sett"], []],
  ["averageSett", ["ends"], ["widthInReed"]],
  ["oldPlaces", ["threads", "broken"], ["tooMany"]],
  ["placesToTie", ["places", "mended"], ["leftEmpty"]],
  ["endsMore", ["ends"], ["than"]],
  ["picksOfStripe", ["wovenLength", "picks"], []],
  ["weftOfPlain", ["wovenLength", "picks", "widthInReed", "eachStripe"], []],
  ["weftByTurns", ["wovenLength", "picks", "threads", "widthInReed", "eachStripe"], ["shots"]],
  ["weftOfStripes", ["picks", "widthInReed", "stripes", "eachStripe"], []],
  ["yarnWithAllowance", ["yarn", "allowance"], []],
  ["weftOfPieces", ["number", "weft"], []],
  ["yarnInAll", ["warp"], []],
  ["yarnForWarp", ["yarn"], []],
  ["yarnMissing", ["needed"], ["onHand"]],
  ["yarnSpare", ["onHand", "packages", "packageMass"], ["needed"]],
  ["countOfLabel", ["length"], ["mass"]],
  ["yarnMore", ["ends", "warpMore"], []],
  ["piecesAllowed", ["onHand"], ["needed"]],
  ["diameterByPeirce", [], ["count"]],
  ["averageFloat", ["threads"], ["intersections"]],
  ["clothMassPerArea", ["sett", "picks", "warpCrimp", "weftCrimp"], ["warpCount", "weftCount"]],
  ["clothMassPerAreaDirect", ["sett", "picks", "warpCount", "weftCount", "warpCrimp", "weftCrimp"], []],
  ["contractedCount", ["count"], ["plies", "contraction"]],
  ["contractionByIntersections", ["intersections", "multiplier"], ["length", "weftCount"]],
  ["countForSett", ["count", "newSett"], ["sett"]],
  ["countForWeight", ["count", "mass"], ["newMass"]],
  ["countFromCloth", ["threads", "clothLength", "crimp"], ["mass"]],
  ["countInSystem", ["count"], []],
  ["countInSystemDirect", ["count"], []],
  ["coverByPeirce", ["threads"], ["count"]],
  ["coverFactorFromTexCover", ["texCover"], []],
  ["crimpFromMeasures", ["threadLength"], ["clothLength"]],
  ["dentsInParts", ["parts", "dentsInPart"], []],
  ["diameterByCoefficient", ["coefficient", "count"], ["density"]],
  ["diametersFromWraps", ["wraps"], ["width", "ratio"]],
  ["directFromIndirect", [], ["count"]],
  ["endsInReed", ["reed", "widthInReed", "endsPerDent"], []],
  ["endsOfColour", ["endsInPattern", "patterns", "endsInPart"], []],
  ["endsPerSection", ["sett", "sectionWidth"], []],
  ["endsWithSelvedges", ["bodyEnds", "endsEachSelvedge", "floatingEnds"], []],
  ["extraYarnOfTurn", ["ends", "turns", "measuredTurn"], ["nominalTurn"]],
  ["healdCloseness", ["heddles"], ["shafts", "width"]],
  ["healdClosenessOfShaft", ["sett", "heddlesInRepeat"], ["endsInRepeat"]],
  ["indirectFromDirect", [], ["count"]],
  ["intersectionsAmong", ["threads", "intersections"], ["threadsInRepeat"]],
  ["lengthOfPicks", ["picksInAll"], ["picks"]],
  ["packagesByLength", ["needed"], ["packageLength"]],
  ["partnerCount", ["wanted"], []],
  ["picksAtLoom", ["picksFinished"], ["loomToFinished"]],
  ["picksForCount", ["picks", "newCount"], ["count"]],
  ["picksFromGlass", ["counted"], ["glass"]],
  ["picksInLength", ["wovenLength", "picks"], []],
  ["pieceCost", [], ["pieces"]],
  ["pieceMass", ["warp", "size", "weft"], []],
  ["reedForSley", ["sett"], []],
  ["reedFromDents", ["dents"], ["length"]],
  ["settByBrierley", ["floatFactor", "constant", "count"], []],
  ["settByCurvature", ["diameters", "ends"], ["intersections"]],
  ["settForCountAndWeave", ["sett", "newCount", "newEnds", "intersections"], ["count", "ends", "newIntersections"]],
  ["settForEqualMass", ["sett", "newCount"], ["count"]],
  ["settForPurpose", ["closest", "share"], []],
  ["settForWeave", ["sett", "newEnds", "intersections"], ["ends", "newIntersections"]],
  ["settForWeight", ["sett", "mass"], ["newMass"]],
  ["settFromPlain", ["plainSett", "times"], []],
  ["sizeFromMasses", ["sizedMass"], ["unsizedMass"]],
  ["sizedCount", ["count"], ["size"]],
  ["specificVolume", ["thickness"], ["massPerArea"]],
  ["spoolLength", ["sections", "warpLength", "cutWaste"], []],
  ["texCoverFactor", ["threads", "count"], []],
  ["threadCover", ["diameter"], ["spacing", "flattening"]],
  ["unsizedMass", ["sizedMass"], ["size"]],
  ["warpMassDirect", ["ends", "warpLength", "count", "allowance"], []],
  ["waterInYarn", ["mass", "regain"], []],
  ["waveHeight", ["spacing", "crimp", "factor"], []],
  ["weftMassDirect", ["wovenLength", "picks", "widthInReed", "count", "allowance"], []],
  ["widthInReedByAdding", ["finishedWidth", "allowance"], []],
];

type Measured = Quantity<string> | number;

/** As one plain number, in the unit of the first. */
function numbersOf(first: Measured, second: Measured): readonly [number, number] {
  if (typeof first === "number" || typeof second === "number") return [first as number, second as number];
  const unit = unitOf(first);
  return [first.in(unit), second.in(unit)];
}

function answers(call: () => unknown): Measured | null {
  try {
    return call() as Measured;
  } catch (error) {
    if (error instanceof QuantityError) return null;
    throw error;
  }
}

describe.each(rows)("%s", (name, more, less) => {
  const [, calculation] = calculations.find(([one]) => one === name) ?? expect.fail(`no calculation ${name}`);
  it.each([...more.map((field) => ["more", field, 1] as const), ...less.map((field) => ["less", field, -1] as const)])(
    "never gives %s of it the wrong way round as %s grows",
    (_way, field, sign) => {
      const input = calculation.declaration.inputs[field] ?? expect.fail(`no input ${field}`);
      fc.assert(
        fc.property(validInput(calculation), validFor(input), (given, other) => {
          const [here, there] = [given, { ...given, [field]: other }].map((one) => answers(() => calculation(one)));
          if (here === null || there === null || here === undefined || there === undefined) return;
          const [a, b] = numbersOf(given[field] as Measured, other as Measured);
          const [x, y] = numbersOf(here, there);
          const rises = (y - x) * sign * (b - a);
          expect(
            rises,
            `${String(given[field])} → ${String(here)}, ${String(other)} → ${String(there)}`,
          ).toBeGreaterThanOrEqual(-1e-9 * Math.abs(x * (b - a)));
        }),
        { numRuns: 60 },
      );
    },
  );
});
