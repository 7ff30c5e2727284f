import { asText } from "@thrum/maths";
import type { WoundStripe } from "@thrum/stripes";
import type { JoiningRow } from "../plan/joining.js";
import type { WarpPlan } from "../plan/plan-warp.js";
import { massText, tapeText, yarnText } from "./amounts.js";
import { shownText } from "./clean.js";
import { keptIndent, section, table, wrapped } from "./layout.js";

const CAUTIONS = [
  "Before the scissors: lock or tie the cloth beam and the warp beam so that neither can roll back when the warp is cut. A warp let go under tension takes its beam, and fingers, with it: ease the ratchet a tooth at a time first, hands clear of the crank.",
  "Cut away from yourself, group by group, each group tied before the next is cut.",
];

function fitLines({ fit, heaviestYarn }: WarpPlan): readonly string[] {
  const verdicts = {
    fits: "The new warp fits the old threading.",
    check: "The new warp can be tied on; look at the lines marked CHECK first.",
    "does not fit": "THE NEW WARP DOES NOT FIT THE OLD ONE as it is planned. Mend the lines marked MUST.",
  };
  const marks = { must: "MUST", check: "CHECK", free: "note" };
  return [
    ...wrapped(verdicts[fit.verdict]),
    ...fit.findings.flatMap(({ about, standing, agrees, says }) => {
      const whose = about === "grist" ? ` (by the heaviest new yarn, ${shownText(heaviestYarn)})` : "";
      return wrapped(`${agrees ? "agrees" : marks[standing]}: ${says}${whose}`, "  ", "    ");
    }),
  ];
}

function beforeCutting({ position }: WarpPlan): readonly string[] {
  const { knotsTied, keep, spared, sparedAt, waste } = position;
  const saved = `The old warp stands in for ${tapeText(spared)} of waste at the ${sparedAt}; the new warp still brings ${tapeText(waste)}.`;
  return [`Tied ${knotsTied}.`, ...[keep, ...CAUTIONS, saved].flatMap((line) => wrapped(line))];
}

function sizeLines(plan: WarpPlan): readonly string[] {
  const { ends, sett, widthInReed, finishedWidth, pieces, warpLength } = plan;
  return [
    `${String(ends)} ends at ${String(sett)} take ${tapeText(widthInReed)} in the reed; finished width ${tapeText(finishedWidth)}.`,
    `Wind ${tapeText(warpLength, "roundUp")} for ${String(pieces)} pieces, that is ${yarnText(warpLength)}.`,
  ].flatMap((line) => wrapped(line));
}

function yarnLines({ yarns }: WarpPlan): readonly string[] {
  const rows = yarns.map(({ name, ends, length, mass, onHand, missing, packageMass, packages, spare }) => [
    shownText(name),
    ends,
    yarnText(length),
    massText(mass, packageMass, "roundUp"),
    massText(onHand, packageMass, "roundDown"),
    massText(missing, packageMass, "roundUp"),
    `${String(packages)} of ${packageMass.toString()}`,
    massText(spare, packageMass, "roundDown"),
  ]);
  return table(["yarn", "ends", "length", "needed", "on hand", "short", "to buy", "left over"], rows);
}

function windingLines({ winding, threadsTogether }: WarpPlan): readonly string[] {
  const threads = `${String(threadsTogether)} thread${threadsTogether === 1 ? "" : "s"}`;
  return [
    ...wrapped(`${threads} wound together. Begin each chain at the near peg; a round is there and back.`),
    ...winding.flatMap(({ chain, firstEnd, lastEnd, ends, stripes }) => [
      "",
      `Chain ${String(chain)}: ends ${String(firstEnd)} to ${String(lastEnd)}, ${String(ends)} in all`,
      ...table(["colour", "ends", "rounds", "so far", "meanwhile"], stripes.map(woundRow)),
    ]),
  ];
}

function woundRow(stripe: WoundStripe<string>): readonly (string | number)[] {
  const { colour, ends, passes, rounds, runningTotal, ties, todo } = stripe;
  const counts = ties.map(({ total }) => String(total)).join(", ");
  const meanwhile = [...(counts === "" ? [] : [`tie the count at ${counts}`]), ...todo];
  return [
    shownText(colour),
    ends,
    passes % 2 === 0 ? String(rounds) : `${String(rounds)} 1/2`,
    runningTotal,
    meanwhile.join("; "),
  ];
}

function layingLines({ laid, endOneAt }: WarpPlan): readonly string[] {
  const rows = laid.map(({ place, number, firstEnd, lastEnd }) => {
    const [from, to] = endOneAt === "left" ? [firstEnd, lastEnd] : [lastEnd, firstEnd];
    return [place, number, `${String(from)} to ${String(to)}`];
  });
  return [`End 1 is at your ${endOneAt} as you sit.`, ...table(["from your left", "chain", "ends"], rows)];
}

function joiningLines({ joining, endOneAt, shafts }: WarpPlan): readonly string[] {
  const row = (one: JoiningRow): readonly (string | number)[] => [
    one.stripe,
    shownText(one.colour),
    one.ends,
    `${String(one.firstEnd)} to ${String(one.lastEnd)}`,
    one.dent,
    one.placeInRepeat,
    one.shaft,
    [one.splitsDent ? "inside a dent" : "", one.splitsRepeat ? "inside a repeat" : ""].filter(Boolean).join(", "),
  ];
  const heads = ["stripe", "colour", "ends", "from end to end", "dent", "place", "shaft", "the edge falls"];
  const carried = shafts.map(({ shaft, ends }) => `shaft ${String(shaft)}: ${String(ends)}`).join(", ");
  return [
    ...wrapped(
      `Begin at end 1, at your ${endOneAt}. At each stripe's last knot the old end must stand in the dent, at the place in the threading repeat and on the shaft given here. If it does not, the miscount lies in this stripe: find it before you tie on.`,
    ),
    ...table(heads, joining.map(row)),
    ...wrapped(`Ends on each shaft: ${carried}.`),
  ];
}

function workings({ steps, yarns }: WarpPlan): readonly string[] {
  const named = yarns.flatMap(({ name, steps: own }) => own.map((one) => ({ of: ` of ${shownText(name)}`, one })));
  const all = [...steps.map((one) => ({ of: "", one })), ...named];
  return all.flatMap(({ of, one }) => {
    const [heading = "", ...lines] = asText(one.explain()).split("\n");
    return [`${heading}${of}`, ...lines.flatMap(keptIndent), ""];
  });
}

/**
 * A plan as plain text in 80 columns, in the order of the work at the loom. A plan that does not fit says so first.
 *
 * @param plan what `planWarp` gives
 */
export function planText(plan: WarpPlan): string {
  const fit = section("Does the new warp fit?", ...fitLines(plan));
  const fits = plan.fit.verdict !== "does not fit";
  const lines = [
    ...wrapped(shownText(plan.title)),
    ...wrapped(shownText(plan.note)),
    "",
    ...(fits ? [] : fit),
    ...section("Before you cut", ...beforeCutting(plan)),
    ...(fits ? fit : []),
    ...section("Width and length", ...sizeLines(plan)),
    ...section("Yarn", ...yarnLines(plan)),
    ...section("Winding", ...windingLines(plan)),
    ...section("Laying the chains", ...layingLines(plan)),
    ...section("Joining", ...joiningLines(plan)),
    ...section("When all is tied", ...wrapped(plan.position.beam)),
    ...section("The workings", ...workings(plan)),
  ];
  return lines.join("\n").trimEnd();
}
