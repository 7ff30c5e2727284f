import { reading } from "../../engine/refusal.js";
import { ashenhurstCurvature, balasubramanianCloth, gateTextile, osterkampAshenhurst } from "../../sources/index.js";
import { cottonCount, inches } from "../../units/index.js";
import type { IndirectCount } from "../../units/index.js";
import type { Weave } from "../weave/drawn.js";
import type { WeaveQuantities } from "../weave/weave-quantities.js";
import { diameterConstant } from "../yarn/diameter-constant.js";
import type { DiameterConstantOf } from "../yarn/diameter-constant.js";
import { diametersByPeirce } from "../yarn/diameters-by-peirce.js";
import { diametersByConstant } from "./diameters-by-constant.js";
import { floatFactor } from "./float-factor.js";
import { settByBrierley } from "./sett-by-brierley.js";
import { settByCurvature } from "./sett-by-curvature.js";
import { settByIntersections } from "./sett-by-intersections.js";
import { settByRule, stepOf } from "./sett-by-rule.js";
import type { SettByRule, SilentRule } from "./sett-by-rule.js";
import { settByWraps } from "./sett-by-wraps.js";

interface Yarn {
  readonly count: IndirectCount;
  readonly material: DiameterConstantOf["material"];
  readonly wrapsPerInch: number | "not wrapped";
}

interface Repeat {
  readonly ends: number;
  readonly intersections: number;
}

const books: readonly DiameterConstantOf["givenBy"][] = ["Taylor", "faena", "SweetGeorgia", "quiltingclimber"];
const square = "square cloth of one yarn; loose for long floats";

function byDiameters(repeat: Repeat, { count, material }: Yarn): readonly SettByRule[] {
  return books.flatMap((givenBy) => {
    const given = reading(() => diameterConstant({ material, givenBy }));
    if (!given.ok) return [];
    const { constant, source } = given.value;
    const yarn = { constant, count };
    const weave = { diameters: diametersByConstant(yarn), ...repeat };
    const first = stepOf(diametersByConstant, yarn);
    const by = `constant ${String(constant)} by ${givenBy}`;
    return [
      settByRule(settByIntersections(weave), {
        rule: `ends and intersections, ${by}`,
        holdsFor: square,
        source,
        status: "read",
        steps: [first, stepOf(settByIntersections, weave)],
      }),
      settByRule(settByCurvature(weave), {
        rule: `curvature, ${by}`,
        holdsFor: square,
        source: ashenhurstCurvature,
        status: "from memory",
        steps: [first, stepOf(settByCurvature, weave)],
      }),
    ];
  });
}

/** Whether each pick is the one before, moved on by one end, always to the same side. */
function isTwill(weave: Weave): boolean {
  const moved = (row: string, by: number): string => row.slice(-by) + row.slice(0, -by);
  const [ends = 0] = weave.map((row) => row.length);
  return [1, ends - 1].some((by) => weave.every((row, pick) => row === moved(weave.at(pick - 1) ?? "", by)));
}

function byBrierley(averageFloat: number, weave: Weave, { count, material }: Yarn): SettByRule | SilentRule {
  const rule = "Brierley";
  if (material !== "cotton") return { rule, why: `its constant for ${material} yarn was not found in print` };
  if (averageFloat !== 1 && !isTwill(weave)) return { rule, why: "only its exponent for twills was found in print" };
  const factor = floatFactor({ averageFloat, exponent: 0.39 });
  const input = { floatFactor: factor, constant: 200, system: cottonCount, count };
  return settByRule(settByBrierley(input), {
    rule,
    holdsFor: "square cloth of cotton, plain or twill",
    source: gateTextile,
    status: "read",
    steps: [stepOf(settByBrierley, input)],
  });
}

function byPeirce(averageFloat: number, { count, material }: Yarn): SettByRule | SilentRule {
  const rule = "jam of Peirce";
  if (material !== "cotton" || averageFloat !== 1) return { rule, why: "it is worked out for cotton in plain weave" };
  const yarn = { count };
  const weave = { diameters: diametersByPeirce(yarn), ends: 2, intersections: 2 };
  return settByRule(settByCurvature(weave), {
    rule,
    holdsFor: "round cotton threads in square plain cloth",
    source: balasubramanianCloth,
    status: "read",
    steps: [stepOf(diametersByPeirce, yarn), stepOf(settByCurvature, weave)],
  });
}

function byWraps(repeat: Repeat, { wrapsPerInch }: Yarn): SettByRule | SilentRule {
  const rule = "wraps";
  if (wrapsPerInch === "not wrapped") return { rule, why: "the yarn was not wrapped" };
  const input = { wraps: wrapsPerInch, width: inches(1), ...repeat };
  return settByRule(settByWraps(input), {
    rule,
    holdsFor: "a working sett, not the closest",
    source: osterkampAshenhurst,
    status: "read",
    steps: [stepOf(settByWraps, input)],
  });
}

/** Every rule on one yarn and weave. */
export function setts(
  { ends, picks, ofPicks }: WeaveQuantities,
  weave: Weave,
  yarn: Yarn,
): { readonly found: readonly SettByRule[]; readonly silent: readonly SilentRule[] } {
  const [first = 0] = ofPicks.intersections;
  const alike = ofPicks.intersections.every((one) => one === first);
  const all = ofPicks.intersections.reduce((total, one) => total + one, 0);
  const repeat = alike ? { ends, intersections: first } : { ends: ends * picks, intersections: all };
  const float = ofPicks.averageFloat;
  const rules = [
    ...byDiameters(repeat, yarn),
    byBrierley(float, weave, yarn),
    byPeirce(float, yarn),
    byWraps(repeat, yarn),
  ];
  return {
    found: rules.filter((one) => "sett" in one),
    silent: rules.filter((one) => !("sett" in one)) as readonly SilentRule[],
  };
}
