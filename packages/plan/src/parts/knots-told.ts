import { asText, inUnit, millimetres } from "@thrum/maths";
import type { Length } from "@thrum/maths";
import type { JobJoin } from "../job/join.js";
import type { KnotsOfYarn } from "./knots.js";
import { listed } from "./told.js";
import type { Told } from "./told.js";

type Knots = NonNullable<JobJoin["knots"]>;

const MET: Readonly<Record<Knots, readonly ("reed" | "heddles")[]>> = {
  "in front of the reed": ["reed", "heddles"],
  "behind the reed": ["heddles"],
  "behind the heddles": ["heddles", "reed"],
};

export interface KnotsMet {
  readonly knots: readonly KnotsOfYarn[];
  readonly tied: Knots;
  readonly space: Length;
  readonly spaceIs: "measured" | "the published share of the pitch";
  readonly endsInDent: number;
}

const millimetresText = (length: Length): string => asText(inUnit(length, millimetres), { step: "0.01" });

/** What to do where knots do not pass the reed: only behind it do they meet it nowhere. */
function insteadOfReed(knots: readonly KnotsOfYarn[]): string {
  const heddles = new Set(knots.map((one) => one.heddles));
  if (heddles.has("does not pass untouched"))
    return "They do not pass the eyes of the heddles untouched either: thread afresh.";
  if (heddles.has("not measured"))
    return "Tie behind the reed if they pass the heddles there (measure an eye: loom.heddleEye), or thread afresh.";
  return "Tie behind the reed, where they pass the heddles alone, or thread afresh.";
}

function reedTold(one: KnotsOfYarn, alike: readonly string[], given: KnotsMet): Told {
  const { clearance, from, to, needs, sideBySide, reed, standing } = one;
  const { space, endsInDent, spaceIs } = given;
  const names = listed(alike);
  const [is, least, most] = [clearance, from, to].map((threads) => threads.toFixed(1));
  const range = `A dent is ${String(is)} threads wide (${String(least)} to ${String(most)} as far as it can be reckoned); the knot needs ${String(needs)} to pass untouched`;
  const across = { sideBySide: millimetresText(sideBySide), space: millimetresText(space) };
  const beside =
    endsInDent < 2
      ? ""
      : `; ${String(endsInDent)} new threads side by side take ${across.sideBySide} of ${across.space}`;
  const by = spaceIs === "measured" ? "" : ` The gap was not measured: it is ${spaceIs}.`;
  const verdict =
    standing === "must"
      ? `The knots of ${names} will not pass the reed. ${insteadOfReed(given.knots)}`
      : `Knots of ${names} at the reed: ${reed.join(", or ")}. Tie one and draw it through one dent before you cut.`;
  const values = { yarns: alike, clearance, from, to, needs, grades: reed, endsInDent, ...across };
  return { standing, about: "knots", says: `${verdict} ${range}${beside}.${by}`, values };
}

/** Yarns of one thickness are told together. */
function atReed(given: KnotsMet): readonly Told[] {
  const alike = new Map<number, KnotsOfYarn[]>();
  for (const one of given.knots) {
    const at = one.sideBySide.in(millimetres);
    alike.set(at, [...(alike.get(at) ?? []), one]);
  }
  return [...alike.values()].flatMap((ones) => {
    const [first] = ones;
    return first === undefined
      ? []
      : [
          reedTold(
            first,
            ones.map(({ yarn }) => yarn),
            given,
          ),
        ];
  });
}

function heddlesTold(knots: readonly KnotsOfYarn[]): readonly Told[] {
  const yarns = knots.filter(({ heddles }) => heddles === "does not pass untouched").map(({ yarn }) => yarn);
  if (yarns.length === 0) return [];
  const says = `Knots of ${listed(yarns)} do not pass the eyes of the heddles untouched, wherever they are tied. Tie one and draw it through one heddle before you cut; if it sticks, thread afresh.`;
  return [{ standing: "check", about: "knots", says, values: { yarns } }];
}

/** What the knots meet where they are tied, and whether they pass there. */
export function againstKnots(given: KnotsMet): readonly Told[] {
  return [...(MET[given.tied].includes("reed") ? atReed(given) : []), ...heddlesTold(given.knots)];
}
