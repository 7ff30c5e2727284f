import { joined, number, part, product, sum } from "./hand.js";
import type { Hand, Part } from "./hand.js";
import type { Place } from "./places.js";
import { called, percentIn } from "./reason.js";
import type { Reason, Scene } from "./reason.js";

export const ONE: Hand = /* @__PURE__ */ number(1);
export type Way = readonly [plus: boolean, divided: boolean];
export const WAYS: readonly Way[] = [
  [true, false],
  [false, false],
  [true, true],
  [false, true],
];

export const factor = (p: Hand, [plus, divided]: Way, line: string): Part =>
  part(sum(part(ONE), part(p, !plus)), divided, line);

function done([plus, divided]: Way, [ownPlus, ownDivided]: Way, p: string): string {
  const right = ownDivided
    ? ownPlus
      ? `dividing by 1 plus it`
      : "dividing it out"
    : ownPlus
      ? "adding it"
      : "taking it off";
  const wrong = divided
    ? plus
      ? `divides by 1 plus ${p}`
      : `divides ${p} out`
    : plus
      ? `adds ${p}`
      : `takes ${p} off`;
  return `${wrong} instead of ${right}`;
}

export const and = (texts: readonly string[]): string => texts.join(" and ");

type Put = (parts: readonly Part[]) => Pick<Reason, "hand" | "place">;

/** A percentage factor of one product: every wrong way of taking it. */
function single(scene: Scene, at: Part, rest: readonly Part[], line: string, put: Put): readonly Reason[] {
  const inside = percentIn(scene, at.of) ?? [];
  const own: Way = [inside[0]?.turned !== true, at.turned];
  const ps = inside.map(({ of }) => of);
  const say = and(ps.map((p) => (p.op === "name" ? called(scene, p.name) : "")));
  const key = and(ps.map((p) => (p.op === "name" ? p.name : "")));
  const made = (family: Reason["family"], what: string, says: string, parts: readonly Part[]): Reason => ({
    family,
    key: `${what} ${key}`,
    line,
    says: () => says,
    ...put([...rest, ...parts]),
  });
  const total = sum(...ps.map((p) => part(p)));
  const wrong = WAYS.filter((way) => way[0] !== own[0] || way[1] !== own[1]);
  const turned = wrong.map((way) =>
    made("percentage", `way ${String(way)}`, done(way, own, say), [factor(total, way, at.line)]),
  );
  const alone = [
    made("percentage", "leaves out", `leaves ${say} out`, []),
    made("percentage", "twice", `takes ${say} twice over`, [at, at]),
    made("base", "only", `takes only the part, ${say}`, [part(total, false, at.line)]),
    made("base", "by the part", `divides by the part, ${say}`, [part(total, true, at.line)]),
    ...[10, 0.1].map((by) => ({
      ...made("percentage", `point ${String(by)}`, `puts the point of ${say} one place off`, [
        part(sum(part(ONE), part(product(part(total), part(number(by))), !own[0])), at.turned, at.line),
      ]),
      share: 0.3,
    })),
  ];
  if (ps.length < 2) return [...turned, ...alone];
  const each = WAYS.map((way) =>
    made(
      "percentages",
      `each ${String(way)}`,
      `${way[1] ? (way[0] ? "divides by 1 plus each of" : "divides out each of") : way[0] ? "adds each of" : "takes off each of"} ${say}, one after the other`,
      ps.map((p) => factor(p, way, at.line)),
    ),
  );
  const less = ps.map((p, index) =>
    made("percentage", `without ${String(index)}`, `leaves ${p.op === "name" ? called(scene, p.name) : ""} out`, [
      part(sum(part(ONE), ...inside.filter((one) => one.of !== p)), at.turned, at.line),
    ]),
  );
  return [...turned, ...alone, ...each, ...less];
}

/** A bare percentage that is multiplied or divided by. */
function bare(scene: Scene, at: Part, rest: readonly Part[], line: string, put: Put): readonly Reason[] {
  const p = at.of;
  if (p.op !== "name") return [];
  const say = called(scene, p.name);
  const made = (family: Reason["family"], what: string, says: string, parts: readonly Part[]): Reason => ({
    family,
    key: `${what} ${p.name}`,
    line,
    says: () => says,
    ...put([...rest, ...parts]),
  });
  return [
    made("base", "rest", `takes what is left beside ${say}`, [factor(p, [false, at.turned], at.line)]),
    ...WAYS.filter(([plus, divided]) => plus || divided !== at.turned).map((way) =>
      made(
        "base",
        `way ${String(way)}`,
        `${way[1] ? "divides by" : "takes"} ${way[0] ? "the whole and" : "the whole less"} ${say} for the part`,
        [factor(p, way, at.line)],
      ),
    ),
  ];
}

/** Everything a hand does wrong with one percentage. */
export function percentReasons(scene: Scene, place: Place): readonly Reason[] {
  const { hand, line } = place;
  if (hand.op !== "product") return [];
  return hand.parts.flatMap((at, index) => {
    const rest = hand.parts.filter((_, other) => other !== index);
    const putIn: Put = (parts) => ({ hand: joined("product", parts.length === 0 ? [part(ONE)] : parts), place });
    const own = at.line === "" ? line : at.line;
    if (percentIn(scene, at.of) !== null) return single(scene, at, rest, own, putIn);
    return at.of.op === "name" && scene.percents.has(at.of.name) ? bare(scene, at, rest, own, putIn) : [];
  });
}
